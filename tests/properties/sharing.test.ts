import jsqr from 'jsqr';
import { describe, expect, it } from 'vitest';
import { bodyKinds, type Card } from '../../app/body';
import { cardLink, decodeCode, encodeCard, type Pixels, readCard, writeCard } from '../../app/sharing';
import { fromBase64Url, toBase64Url } from '../../app/sharing/code/base64url';
import { checksum } from '../../app/sharing/code/checksum';
import { pixelsOf } from '../../app/sharing/qr/plane';
import { readFrame } from '../../app/sharing/qr/read';
import { qrOf } from '../../app/sharing/qr/write';
import { randomCard, seeded } from '../toys/random';

/** 2,000 in CI; `MUTATIONS=20000` for the long run. */
const MUTATIONS = Number(process.env.MUTATIONS ?? 2000);
/** Nothing that comes in may hold the app up longer, in milliseconds. */
const HANG_MS = 1000;

const random = seeded(5);
const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
const toys = (count: number): Card[] =>
  Array.from({ length: count }, (_, toy) =>
    randomCard(random, bodyKinds[toy % 3] ?? 'upright', { full: toy % 2 === 0, nasty: toy % 10 === 9 }),
  )
    .map((card) => readCard(writeCard(card)))
    .flatMap((read) => (read.ok ? [read.card] : []));

describe('round trips of 1,000 random toys', () => {
  const cards = toys(1000);

  it('are of cards that can be read at all', () => expect(cards.length).toBeGreaterThan(930));

  it('as a file: equal', () => {
    for (const card of cards) expect(readCard(writeCard(card))).toEqual({ ok: true, card, skipped: [] });
  });

  it('as a code: equal, lengths within a quarter of a millimetre, and a second trip exact', () => {
    for (const card of cards) {
      const { fragment, leftOut } = encodeCard(card, 4000);
      expect(leftOut).toEqual([]);
      const read = decodeCode(fragment);
      if (!read.ok) expect.unreachable(JSON.stringify([read, card]));
      expect(read.card).toEqual({ ...card, readings: near(card.readings) });
      expect(decodeCode(encodeCard(read.card, 4000).fragment)).toEqual(read);
    }
  });

  it('as a QR, every fourth: the link comes back, by our decoder and, now and then, by one that did not write it', () => {
    for (const [toy, card] of cards.entries()) {
      if (toy % 4 !== 0) continue;
      const { link } = cardLink(card, 'https://hemling.example/');
      const picture = pictureOf(link);
      expect(readFrame(picture, 0)).toBe(link);
      if (toy % 20 === 0) expect(jsqr(picture.data, picture.width, picture.height)?.data).toBe(link);
    }
  });
});

/** A QR as it stands in a card's picture: black on white, whole pixels a module. */
function pictureOf(link: string): Pixels {
  const { size, dark } = qrOf(link);
  const module = 4;
  const width = (size + 8) * module;
  const light = Float32Array.from({ length: width * width }, (_, at) => {
    const [x, y] = [Math.floor((at % width) / module) - 4, Math.floor(at / width / module) - 4];
    return dark[y]?.[x] ? 0 : 255;
  });
  return pixelsOf({ width, height: width, light });
}

function near(readings: Card['readings']) {
  const within = (length: number) => expect.toSatisfy((other: number) => Math.abs(other - length) <= 0.25 + 1e-9);
  return Object.fromEntries(Object.entries(readings).map(([id, row]) => [id, row.map(within)]));
}

describe(`${MUTATIONS} damaged cards and codes`, () => {
  const sources = toys(40).map((card) =>
    writeCard({ ...card, note: 'Ψ', orders: [{ garment: 'vest', choices: { a: 1 } }] }),
  );
  const noise = [
    '"',
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '0',
    '-',
    'e',
    '\\',
    '\u0000',
    '\u202e',
    '\ud800',
    '<b>',
    '__proto__',
    '1e999',
    'null',
    '{"a":',
    '9'.repeat(400),
  ];
  const mutated = (text: string): string => {
    const at = Math.floor(random() * text.length);
    const end = at + Math.floor(random() ** 3 * 40);
    return pick([
      () => text.slice(0, at),
      () => text.slice(0, at) + text.slice(end),
      () => text.slice(0, at) + pick(noise) + text.slice(end),
      () =>
        text.slice(0, at) +
        String.fromCharCode(text.charCodeAt(at) ^ (1 << Math.floor(random() * 8))) +
        text.slice(at + 1),
      () => text.slice(0, end) + text.slice(at),
      () => text.slice(0, at) + pick(noise).repeat(1 + Math.floor(random() * 2000)) + text.slice(at),
    ])();
  };
  const twisted = (text: string) => (random() < 0.5 ? mutated(text) : mutated(mutated(text)));

  it('codes whose checksum was made to fit: a clear answer each time, soon', () => {
    const contents = sources.map(
      (text) => fromBase64Url(encodeCard(JSON.parse(text)).fragment.slice(2)) ?? new Uint8Array(),
    );
    let slowest = 0;
    for (let count = 0; count < MUTATIONS; count++) {
      const bytes = pick(contents).slice(0, -3);
      for (let change = 0; change <= random() * 4; change++)
        bytes[Math.floor(random() * bytes.length)] = random() * 256;
      const content = random() < 0.2 ? bytes.slice(0, Math.floor(random() * bytes.length)) : bytes;
      const sum = checksum(Uint8Array.of(0x31, ...content));
      const started = performance.now();
      const answer = decodeCode(`#1${toBase64Url(Uint8Array.of(...content, sum >> 16, sum >> 8, sum))}`);
      slowest = Math.max(slowest, performance.now() - started);
      if (answer.ok) expect(readCard(writeCard(answer.card))).toEqual({ ...answer, skipped: [] });
      else expect(answer.fault.code).toMatch(/^[a-z-]+$/);
    }
    expect(slowest).toBeLessThan(HANG_MS);
  });

  it.each([
    ['cards', (text: string) => text, readCard],
    ['codes', (text: string) => encodeCard(JSON.parse(text)).fragment, decodeCode],
  ] as const)('%s: a clear answer each time, soon', (_, form, read) => {
    const texts = sources.map(form);
    let slowest = 0;
    for (let count = 0; count < MUTATIONS; count++) {
      const text = twisted(pick(texts));
      const started = performance.now();
      const answer = read(text);
      slowest = Math.max(slowest, performance.now() - started);
      if (answer.ok) expect(readCard(writeCard(answer.card))).toEqual({ ...answer, skipped: [] });
      else expect(answer.fault.code).toMatch(/^[a-z-]+$/);
    }
    expect(slowest).toBeLessThan(HANG_MS);
  });
});
