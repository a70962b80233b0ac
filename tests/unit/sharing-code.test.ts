import { describe, expect, it } from 'vitest';
import { type Card, type MeasureId, measureIds, traitValues } from '../../app/body';
import { decodeCode, encodeCard } from '../../app/sharing';
import { fromBase64Url, toBase64Url } from '../../app/sharing/code/base64url';
import { type BitWriter, bytesOf } from '../../app/sharing/code/bits';
import { checksum } from '../../app/sharing/code/checksum';
import { frozenMeasures, OTHER_TYPICAL } from '../../app/sharing/code/frozen-measures';
import { frozenBodies, frozenTraits, frozenUnits } from '../../app/sharing/code/frozen-traits';
import { readWhole, signedWidth, writeSigned, writeWhole } from '../../app/sharing/code/whole-numbers';
import { qrOf } from '../../app/sharing/qr/write';
import small from '../photos/small-pictures.json';
import { randomCard, seeded } from '../toys/random';

const ADDRESS_OF_40 = 'https://hemling-cards.example/for-makers';
const ascii = (text: string) => new TextEncoder().encode(text);

describe('the parts a code is made of', () => {
  it('CRC-24/OpenPGP: check value 21CF02 of "123456789" (catalogue of parametrised CRC algorithms)', () => {
    expect(checksum(ascii('123456789'))).toBe(0x21cf02);
    expect(checksum(ascii('123456788'))).not.toBe(0x21cf02);
  });

  it('base64url: the vectors of RFC 4648, section 10, unpadded, and the two letters of section 5', () => {
    for (const [text, encoded] of [
      ['', ''],
      ['f', 'Zg'],
      ['fo', 'Zm8'],
      ['foo', 'Zm9v'],
      ['foob', 'Zm9vYg'],
      ['foobar', 'Zm9vYmFy'],
    ] as const) {
      expect(toBase64Url(ascii(text))).toBe(encoded);
      expect(fromBase64Url(encoded)).toEqual(ascii(text));
    }
    expect(toBase64Url(Uint8Array.of(0xfb, 0xff))).toBe('-_8');
    for (const wrong of ['Zh', 'Z', 'Zg=', 'Zm9 ', 'é']) expect(fromBase64Url(wrong), wrong).toBeNull();
  });

  it('whole numbers of order 0: ITU-T H.264 table 9-2', () => {
    const strings = ['1', '010', '011', '00100', '00101', '00110', '00111', '0001000', '0001001', '0001010'];
    strings.forEach((bits, value) => {
      const writer: BitWriter = { bits: [] };
      writeWhole(writer, value, 0);
      expect(writer.bits.join('')).toBe(bits);
      expect(readWhole({ bytes: bytesOf(writer), at: 0 }, 0)).toBe(value);
    });
  });

  it('the width of a signed number is told before it is written', () => {
    for (const order of [0, 3, 9])
      for (let value = -70; value <= 70; value++) {
        const writer: BitWriter = { bits: [] };
        writeSigned(writer, value, order);
        expect(writer.bits.length).toBe(signedWidth(value, order));
      }
  });
});

describe('the frozen lists', () => {
  it('number every measure, body, unit and trait value there is; add new ones at their end', () => {
    const ids = frozenMeasures.map(([id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(measureIds.filter((id) => !ids.includes(id))).toEqual([]);
    for (const [trait, values] of Object.entries(traitValues)) {
      const [, frozen = []] = frozenTraits.find(([id]) => id === trait) ?? [];
      expect(
        values.filter((value) => !frozen.includes(value)),
        trait,
      ).toEqual([]);
    }
    expect(frozenBodies.slice(0, 3)).toEqual(['upright', 'four-legged', 'round']);
    expect(frozenUnits.slice(0, 2)).toEqual(['cm', 'in']);
    expect(Math.max(...frozenTraits.map(([, values]) => values.length))).toBeLessThanOrEqual(7);
  });

  it('can be read past by an app that does not know the last measures', () => {
    const known = frozenMeasures.length;
    const later = [...frozenMeasures, ['horn-girth', OTHER_TYPICAL] as const];
    const list = frozenMeasures as (readonly [string, number])[];
    list.push(...later.slice(known));
    const readings = { 'head-girth': [400], 'horn-girth': [61, 62], 'body-girth': [410] } as Card['readings'];
    const { fragment } = encodeCard(sample({ readings }));
    list.length = known;
    expect(decodeCode(fragment)).toMatchObject({
      ok: true,
      card: { readings: { 'head-girth': [400], 'body-girth': [410] } },
      skipped: [`measure-${known}`],
    });
  });
});

function sample(more: Partial<Card> = {}): Card {
  return {
    format: 'hemling-card',
    version: 1,
    toy: { name: 'Brambleberry', body: 'upright', traits: { shoulders: 'none', ears: 'side', tail: true } },
    unit: 'cm',
    taken: '2026-11-20',
    note: '',
    readings: { 'head-girth': [431, 430], 'neck-girth': [222] },
    ...more,
  };
}

describe('how long a link is', () => {
  const random = seeded(30);
  const spread = (share: number) => Math.exp((random() + random() + random() - 1.5) * 2 * share);
  /** Thirty measures, ten of them read twice, a name of twelve letters; `grid` is what the readings are rounded to. */
  const fullCard = (grid: number, name: string): Card => {
    const size = spread(0.8);
    const readings = frozenMeasures.slice(0, 30).map(([id, typical], row) => {
      const first = Math.min(2900, Math.max(grid * 4, Math.round((typical * size * spread(0.3)) / grid) * grid));
      return [id, row % 3 === 0 ? [first, first + Math.round(((random() - 0.5) * 12) / grid) * grid] : [first]];
    });
    const traits = Object.fromEntries(Object.entries(traitValues).map(([trait, values]) => [trait, values.at(-1)]));
    return sample({ toy: { name, body: 'upright', traits }, readings: Object.fromEntries(readings) });
  };

  it.each([
    ['half millimetres', 0.5, 'Brambleberry'],
    ['sixteenths', 25.4 / 16, 'Brambleberry'],
    ['tenths of a millimetre', 0.1, 'Brambleberry'],
    ['half millimetres, a name in another script', 0.5, 'ハムリンちゃんのともだち'],
  ])('a full card of thirty readings in %s: 213 letters and QR version 10 at most', (_, grid, name) => {
    expect(ADDRESS_OF_40).toHaveLength(40);
    for (let toy = 0; toy < 100; toy++) {
      const { fragment, leftOut } = encodeCard(fullCard(grid, name));
      expect(leftOut).toEqual([]);
      const link = ADDRESS_OF_40 + fragment;
      expect(link.length).toBeLessThanOrEqual(213);
      expect(qrOf(link).version).toBeLessThanOrEqual(10);
    }
  });

  it('even where the readings have nothing to do with any toy', () => {
    for (let toy = 0; toy < 100; toy++) {
      const readings = frozenMeasures.slice(0, 30).map(([id], row) => {
        const values = [1 + Math.round(random() * 5998) / 2, 1 + Math.round(random() * 5998) / 2];
        return [id, row % 3 === 0 ? values : values.slice(1)];
      });
      const { fragment } = encodeCard({ ...fullCard(0.5, 'Brambleberry'), readings: Object.fromEntries(readings) });
      expect(ADDRESS_OF_40.length + fragment.length).toBeLessThanOrEqual(213);
    }
  });
});

describe('what a code leaves out', () => {
  const photo = `data:image/jpeg;base64,${small['baseline.jpg']}`;
  const note = 'Fur is thick; the tape was held snug. '.repeat(12).trim();
  const order = { garment: 'hooded-top', choices: { opening: 'front', lined: true } };

  it('nothing of a short card', () => {
    const card = sample({ note: 'Snug.', corrections: { chest: -2.5 }, orders: [order] });
    const { fragment, leftOut } = encodeCard(card);
    expect(leftOut).toEqual([]);
    expect(decodeCode(fragment)).toEqual({ ok: true, card, skipped: [] });
  });

  it('a photo always, a long note, and orders beyond a QR of version 20', () => {
    expect(encodeCard(sample({ photo })).leftOut).toEqual(['photo']);
    expect(encodeCard(sample({ note, photo })).leftOut).toEqual(['note', 'photo']);
    const many = encodeCard(sample({ note, orders: Array(20).fill(order), corrections: { chest: 3 } }));
    expect(many.leftOut).toEqual(['orders', 'note']);
    expect(decodeCode(many.fragment)).toEqual({ ok: true, card: sample({ corrections: { chest: 3 } }), skipped: [] });
  });

  it('no long note where the caller has room for it', () => {
    const { fragment, leftOut } = encodeCard(sample({ note }), 2000);
    expect(leftOut).toEqual([]);
    expect(decodeCode(fragment)).toMatchObject({ ok: true, card: { note } });
  });
});

describe('reading a code', () => {
  const { fragment } = encodeCard(sample());

  it.each([
    ['the fragment', fragment],
    ['a link', `https://hemling.example/any/path/${fragment}`],
    ['a link that mail broke', ` https://hemling.example/${fragment.slice(0, 20)}\r\n ${fragment.slice(20)} `],
    ['a link with something after it', `${fragment})`],
  ])('from %s', (_, text) => expect(decodeCode(text)).toEqual({ ok: true, card: sample(), skipped: [] }));

  it.each([
    ['', 'not-a-code'],
    ['https://hemling.example/', 'not-a-code'],
    ['https://hemling.example/#/toys', 'not-a-code'],
    ['#1', 'damaged-code'],
    ['#1AAAA', 'damaged-code'],
    [fragment.slice(0, -1), 'damaged-code'],
    [`${fragment}A`, 'damaged-code'],
    [fragment.toLowerCase(), 'damaged-code'],
    [fragment.replace('#1', '#2'), 'newer-version'],
    [`#1${'A'.repeat(10_000)}`, 'too-large'],
  ])('refuses %j', (text, code) => expect(decodeCode(text)).toMatchObject({ ok: false, fault: { code } }));

  it('refuses every one of its letters changed to any other', () => {
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    for (let at = 2; at < fragment.length; at++)
      for (const letter of letters)
        if (letter !== fragment[at]) {
          const text = fragment.slice(0, at) + letter + fragment.slice(at + 1);
          expect(decodeCode(text), text).toMatchObject({ ok: false });
        }
  });

  it('judges what a code with a right checksum says', () => {
    const wrong = encodeCard(
      sample({ readings: { 'head-girth': [4000 as number] } satisfies Partial<Record<MeasureId, number[]>> }),
    );
    expect(decodeCode(wrong.fragment)).toMatchObject({
      ok: false,
      fault: { code: 'length-out-of-range', where: 'readings.head-girth[0]' },
    });
    const named = encodeCard(sample({ toy: { name: 'a\u202eb', body: 'upright', traits: {} } }));
    expect(decodeCode(named.fragment)).toMatchObject({ ok: true, card: { toy: { name: 'ab' } } });
  });

  it('finds the shortest manner itself: a card is never longer than the plain numbers would be', () => {
    const card = randomCard(seeded(7), 'upright', { full: true });
    const plainBits = Object.values(card.readings).reduce((bits, row) => bits + 13 * row.length, 0);
    expect(encodeCard(card).fragment.length * 6).toBeLessThan(plainBits + 300);
  });
});
