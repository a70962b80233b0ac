import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import jpeg from 'jpeg-js';
import { describe, expect, it } from 'vitest';
import { cardLink, carriesCard, readArrival, type Unpack } from '../../app/sharing';
import { receiveShare, takeShared } from '../../app/sharing/inbox';
import { likelyPlaces } from '../../app/sharing/qr/likely-places';
import { planeOf } from '../../app/sharing/qr/plane';
import { qrOf } from '../../app/sharing/qr/write';
import { claims } from '../photos/claims';
import { drawnQr, photograph } from '../photos/photograph';
import { seeded } from '../toys/random';

const textOf = (file: string) => readFileSync(new URL(`../cards/1/${file}`, import.meta.url), 'utf8').trim();
const card = textOf('bramble-inches.json');
const link = textOf('bramble-inches.link');

const photo = (text: string, share = 0.8) =>
  photograph(drawnQr(qrOf(text)), { width: 400, height: 400, share, blur: 0.8, random: seeded(2) });
const fileOf = ({ width, height, data }: ReturnType<typeof photo>) =>
  new Blob([Uint8Array.from(jpeg.encode({ width, height, data: Buffer.from(data.buffer) }, 80).data)], {
    type: 'image/jpeg',
  });
const unpack: Unpack = async (picture) => {
  const { width, height, data } = jpeg.decode(await picture.arrayBuffer(), { useTArray: true, formatAsRGBA: true });
  return { width, height, data: new Uint8ClampedArray(data) };
};
const never: Unpack = () => Promise.reject(new Error('not asked for'));

describe('whatever comes in', () => {
  it.each([
    ['a link', link],
    ['a card’s text', card],
    ['a card file', new Blob([card], { type: 'application/json' })],
    ['a file with a link in it', new Blob([`Look: ${link} `])],
    ['a picture', fileOf(photo(link))],
    ['a picture without a type', new Blob([fileOf(photo(link))])],
  ])('%s is read', async (_, arrival) => {
    expect(await readArrival(arrival, unpack)).toMatchObject({ ok: true, card: { toy: { name: 'Bramble' } } });
  });

  it.each([
    ['another QR', fileOf(photo('https://example.org/')), 'no-qr'],
    ['a card file with a code in its note', new Blob([card.replace('"note":""', '"note":"#1"')]), null],
    ['a picture that is none', new Blob(['<svg/>'], { type: 'image/svg+xml' }), 'not-a-picture'],
    ['a large file', new Blob([' '.repeat(70_000)]), 'too-large'],
    ['a huge picture', new Blob([new Uint8Array(33 * 1024 * 1024)], { type: 'image/png' }), 'too-large'],
    ['a bomb', new Blob([claims.png.of(40_000, 40_000)]), 'too-large'],
    ['nothing', new Blob([]), 'not-json'],
  ])('%s: the answer is clear', async (_, arrival, code) => {
    const read = await readArrival(
      arrival,
      code === 'not-a-picture' ? async () => null : code === 'too-large' ? never : unpack,
    );
    expect(read.ok ? null : read.fault.code).toBe(code);
  });

  it('a file that cannot be read is said to be so', async () => {
    const gone = Object.assign(new Blob(['{}']), { text: () => Promise.reject(new Error('gone')) });
    expect(await readArrival(gone, unpack)).toMatchObject({ ok: false, fault: { code: 'unreadable-file' } });
  });
});

describe('links', () => {
  it('carry a card in the fragment, whatever else the address had', () => {
    const read = JSON.parse(card);
    const { fragment } = { fragment: link.slice(link.indexOf('#')) };
    for (const home of ['https://a.example/b/', 'https://a.example/b/#/toy/3', 'https://a.example/b/?c#d'])
      expect(cardLink(read, home).link).toBe(`https://a.example/b/${fragment}`);
    expect([link, '#1', '#2AAAA', '#/card', 'https://a.example/'].map(carriesCard)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('where a QR may be', () => {
  it('is the busiest square: found in one corner of a picture', () => {
    const [place, ...others] = likelyPlaces(planeOf(photo(link, 0.25)));
    expect(others.length).toBeLessThan(3);
    expect(place).toBeDefined();
    if (!place) return;
    expect(place.x).toBeGreaterThan(100);
    expect(place.x + place.width).toBeLessThan(300);
    expect(place.width * place.height).toBeLessThan(200 * 200);
  });

  it('is nowhere on an empty sheet', () => {
    expect(
      likelyPlaces(planeOf({ width: 90, height: 60, data: new Uint8ClampedArray(90 * 60 * 4).fill(255) })),
    ).toEqual([]);
  });
});

const MB = 1024 * 1024;
const FORM = '--b\r\ncontent-disposition: form-data; name="text"\r\n\r\n';

describe('the inbox', () => {
  const scope = 'https://hemling.example/';
  const shared = (things: Record<string, string>) => {
    const body = new FormData();
    for (const [name, thing] of Object.entries(things)) body.append(name, thing);
    return new Request(`${scope}share`, { method: 'POST', body });
  };

  it('keeps what was shared until the app looks, once', async () => {
    const answer = await receiveShare(shared({ title: ' ', text: link }), scope);
    expect([answer.status, answer.headers.get('location')]).toEqual([303, `${scope}#/card?shared`]);
    expect(await takeShared()).toEqual([link]);
    expect(await takeShared()).toEqual([]);
  });

  it('holds so many and so much: the oldest makes way', async () => {
    for (let at = 0; at < 20; at++) await receiveShare(shared({ text: `share ${at}` }), scope);
    expect(await takeShared()).toEqual(Array.from({ length: 8 }, (_, at) => `share ${at + 12}`));
    const many = Object.fromEntries(Array.from({ length: 20 }, (_, at) => [`text${at}`, `new ${at}`]));
    await receiveShare(shared(many), scope);
    expect((await takeShared()).length).toBe(8);
    for (const letter of 'abcde') await receiveShare(shared({ text: letter.repeat(5 * MB) }), scope);
    expect((await takeShared()).map((thing) => String(thing)[0])).toEqual(['c', 'd', 'e']);
  });

  it('refuses what is over 8 MB, says so, and reads no further', async () => {
    await receiveShare(shared({ text: 'first' }), scope);
    const answer = await receiveShare(shared({ text: 'x'.repeat(8 * MB + 1) }), scope);
    expect(answer.headers.get('location')).toBe(`${scope}#/card?shared=too-large`);
    let asked = 0;
    const endless = new ReadableStream({
      pull: (rest) => {
        asked++;
        rest.enqueue(new TextEncoder().encode(asked === 1 ? FORM : 'x'.repeat(MB)));
      },
    });
    const headers = { 'content-type': 'multipart/form-data; boundary=b' };
    const request = new Request(`${scope}share`, {
      method: 'POST',
      body: endless,
      headers,
      duplex: 'half',
    } as RequestInit);
    expect((await receiveShare(request, scope)).headers.get('location')).toBe(`${scope}#/card?shared=too-large`);
    expect(asked).toBeLessThan(14);
    expect(await takeShared()).toEqual(['first']);
  });

  it('survives a form that is none', async () => {
    const broken = new Request(`${scope}share`, {
      method: 'POST',
      body: 'x',
      headers: { 'content-type': 'multipart/form-data' },
    });
    expect((await receiveShare(broken, scope)).status).toBe(303);
    expect(await takeShared()).toEqual([]);
  });
});
