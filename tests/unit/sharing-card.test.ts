import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { demoCards } from '../../app/measuring';
import { readCard, writeCard } from '../../app/sharing';
import { claims } from '../photos/claims';

const schema = JSON.parse(readFileSync(new URL('../../assets/schema/card-1.json', import.meta.url), 'utf8'));
const fitsSchema = new Ajv2020({ strict: false }).compile(schema);

const sample = () => ({
  format: 'hemling-card',
  version: 1,
  toy: { name: 'Bramble', body: 'upright', traits: { shoulders: 'sloped', ears: 'top', tail: true, stuffing: 'soft' } },
  unit: 'in',
  taken: '2026-11-20',
  note: '',
  readings: { 'head-girth': [431.8], 'upper-arm-girth': [203.2, 200] },
});
/** The sample as a card file, with the value at a place (keys with dots between) replaced, or taken out by `undefined`. */
const sampleWith = (place: string, value: unknown) => {
  const put = (inside: unknown, [key = '', ...keys]: string[]): object => ({
    ...(inside as object),
    [key]: keys.length === 0 ? value : put((inside as Record<string, unknown>)[key], keys),
  });
  return JSON.stringify(put(sample(), place.split('.')));
};
const jpeg = (bytes: number, side = 480) => {
  const head = claims.jpeg.of(side, side);
  const all = Buffer.concat([head, Buffer.alloc(bytes - head.length)]);
  return `data:image/jpeg;base64,${all.toString('base64')}`;
};

describe('a card that is right', () => {
  it('is read as it is, and written as it was read', () => {
    const text = JSON.stringify(sample());
    expect(readCard(text)).toEqual({ ok: true, card: sample(), skipped: [] });
    const read = readCard(text);
    if (read.ok) expect(writeCard(read.card)).toBe(text);
  });

  it('fits the published schema, as all demo toys do', () => {
    for (const card of [sample(), ...demoCards]) expect(fitsSchema(card), JSON.stringify(fitsSchema.errors)).toBe(true);
    for (const card of demoCards) expect(readCard(writeCard(card))).toMatchObject({ ok: true, skipped: [] });
  });

  it('may leave out traits and note, and may carry corrections, orders and a photo', () => {
    expect(readCard(sampleWith('toy.traits', undefined))).toMatchObject({ ok: true, card: { toy: { traits: {} } } });
    expect(readCard(sampleWith('note', undefined))).toMatchObject({ ok: true, card: { note: '' } });
    const orders = [
      { garment: 'hooded-top', choices: { opening: 'front', lined: true, share: 0.4 }, allowances: { hem: 12.7 } },
    ];
    expect(readCard(sampleWith('orders', orders))).toMatchObject({ ok: true, card: { orders } });
    expect(readCard(sampleWith('corrections', { chest: -4 }))).toMatchObject({
      ok: true,
      card: { corrections: { chest: -4 } },
    });
    expect(readCard(sampleWith('photo', jpeg(40 * 1024)))).toMatchObject({
      ok: true,
      card: { photo: jpeg(40 * 1024) },
    });
  });

  it('is the same text whatever order its keys came in', () => {
    const turned = JSON.stringify(Object.fromEntries(Object.entries(sample()).reverse()));
    const read = readCard(turned);
    expect(read.ok && writeCard(read.card)).toBe(JSON.stringify(sample()));
  });
});

describe('what is not known', () => {
  it('drops unknown keys', () => {
    expect(readCard(sampleWith('owner', 'someone'))).toEqual({ ok: true, card: sample(), skipped: [] });
    expect(readCard(sampleWith('toy.colour', 'red'))).toEqual({ ok: true, card: sample(), skipped: [] });
  });

  it('lists unknown measures, trait values and corrections, and skips them', () => {
    expect(readCard(sampleWith('readings.horn-girth', 'anything'))).toEqual({
      ok: true,
      card: sample(),
      skipped: ['horn-girth'],
    });
    expect(readCard(sampleWith('toy.traits.ears', 'three'))).toMatchObject({ ok: true, skipped: ['traits.ears'] });
    expect(readCard(sampleWith('corrections.wing', 3))).toEqual({
      ok: true,
      card: sample(),
      skipped: ['corrections.wing'],
    });
  });

  it('lists no more, and no longer names, than a screen holds', () => {
    const many = Object.fromEntries(Array.from({ length: 900 }, (_, n) => [`${n}-${'x'.repeat(40)}\u202e`, [1]]));
    const read = readCard(sampleWith('readings', many));
    expect(read).toMatchObject({ ok: true, card: { readings: {} } });
    expect(read.ok && read.skipped.length).toBe(40);
    expect(read.ok && read.skipped.every((name) => name.length <= 40 && !name.includes('\u202e'))).toBe(true);
  });

  it('takes no key for a prototype', () => {
    const text = JSON.stringify(sample()).replace('"head-girth":', '"__proto__":[1],"constructor":[2],"head-girth":');
    const read = readCard(text.replace('"note":', '"__proto__":{"polluted":1},"note":'));
    expect(read).toEqual({ ok: true, card: sample(), skipped: [] });
    expect({}).not.toHaveProperty('polluted');
  });
});

describe('a card that is wrong', () => {
  it.each([
    ['format', 'other-card', 'not-a-card', ''],
    ['version', 2, 'newer-version', 'version'],
    ['version', 99, 'newer-version', 'version'],
    ['version', 0, 'unknown-version', 'version'],
    ['version', '1', 'unknown-version', 'version'],
    ['toy', undefined, 'missing', 'toy'],
    ['toy', [], 'missing', 'toy.name'],
    ['toy.name', undefined, 'missing', 'toy.name'],
    ['toy.name', 7, 'not-text', 'toy.name'],
    ['toy.name', 'x'.repeat(81), 'too-long', 'toy.name'],
    ['toy.name', 'x'.repeat(10_000), 'too-long', 'toy.name'],
    ['toy.body', 'plush', 'unknown-body', 'toy.body'],
    ['toy.traits', [], 'not-an-object', 'toy.traits'],
    ['unit', 'mm', 'unknown-unit', 'unit'],
    ['taken', '2026-02-30', 'bad-date', 'taken'],
    ['taken', '0000-01-01', 'bad-date', 'taken'],
    ['taken', '20 November', 'bad-date', 'taken'],
    ['note', 'x'.repeat(501), 'too-long', 'note'],
    ['readings', [], 'not-an-object', 'readings'],
    ['readings.head-girth', 431.8, 'not-a-list', 'readings.head-girth'],
    ['readings.head-girth', [0], 'length-out-of-range', 'readings.head-girth[0]'],
    ['readings.head-girth', [400, -1], 'length-out-of-range', 'readings.head-girth[1]'],
    ['readings.head-girth', [3000.1], 'length-out-of-range', 'readings.head-girth[0]'],
    ['readings.head-girth', [null], 'not-a-number', 'readings.head-girth[0]'],
    ['readings.head-girth', ['NaN'], 'not-a-number', 'readings.head-girth[0]'],
    ['readings.head-girth', [1, 2, 3, 4, 5, 6], 'too-many', 'readings.head-girth'],
    ['corrections.chest', 4000, 'length-out-of-range', 'corrections.chest'],
    ['orders', [{}], 'missing', 'orders[0].garment'],
    ['orders', [{ garment: 'hat', choices: { brim: [] } }], 'bad-choice', 'orders[0].choices.brim'],
    ['orders', [{ garment: 'a\u202eb' }], 'bad-text', 'orders[0].garment'],
    ['orders', Array(21).fill({ garment: 'hat' }), 'too-many', 'orders'],
    ['photo', 'data:text/html;base64,/9j/', 'bad-photo', 'photo'],
    ['photo', 'data:image/jpeg;base64,AAAA', 'bad-photo', 'photo'],
    ['photo', jpeg(40 * 1024 + 3), 'bad-photo', 'photo'],
    ['photo', jpeg(100, 20_000), 'bad-photo', 'photo'],
  ])('wrong in row %#, at %s', (place, value, code, where) => {
    expect(readCard(sampleWith(place, value))).toMatchObject({ ok: false, fault: { code, where } });
    if (
      code !== 'unknown-version' &&
      place !== 'orders' &&
      place !== 'photo' &&
      code !== 'bad-date' &&
      place !== 'toy.traits'
    )
      expect(fitsSchema(JSON.parse(sampleWith(place, value))), 'the schema refuses it too').toBe(false);
  });

  it.each([
    ['', 'not-json'],
    ['{', 'not-json'],
    ['{"readings":{"head-girth":[NaN]}}', 'not-json'],
    ['['.repeat(60_000), 'not-json'],
    [`${'{"a":'.repeat(12_000)}1${'}'.repeat(12_000)}`, 'not-json or other'],
    ['null', 'not-a-card'],
    ['[]', 'not-a-card'],
    ['{"format":"hemling-backup","version":1}', 'not-a-card'],
    ['x'.repeat(65_537), 'too-large'],
    ['é'.repeat(40_000), 'too-large'],
  ])('text number %# is refused', (text, code) => {
    const read = readCard(text);
    expect(read.ok).toBe(false);
    if (!read.ok && !code.includes(' or ')) expect(read.fault.code).toBe(code);
  });

  it('refuses 64 MB at once', () => {
    const started = performance.now();
    expect(readCard(' '.repeat(64 * 1024 * 1024))).toMatchObject({ ok: false, fault: { code: 'too-large' } });
    expect(performance.now() - started).toBeLessThan(200);
  });

  it('refuses a number too large for a length, which JSON can write', () => {
    const text = JSON.stringify(sample()).replace('431.8', '1e999');
    expect(readCard(text)).toMatchObject({ ok: false, fault: { code: 'length-out-of-range' } });
  });
});

describe('names of strangers', () => {
  it.each([
    ['\u202eelbmarB\u202c', 'elbmarB'],
    ['Bram\u0000ble\u0007', 'Bramble'],
    [' Bram\n\tble ', 'Bram ble'],
    ['\ufeffBramble\ud800', 'Bramble'],
    ['\u2066Bramble\u2069', 'Bramble'],
    ['Cafe\u0301', 'Caf\u00e9'],
    ['<img src=x onerror=alert(1)>', '<img src=x onerror=alert(1)>'],
    ['👩‍🎨 برمبل\u200f', '👩‍🎨 برمبل\u200f'],
    ['\u0000\u202e', ''],
  ])('%j becomes %j', (name, cleaned) => {
    expect(readCard(sampleWith('toy.name', name))).toMatchObject({ ok: true, card: { toy: { name: cleaned } } });
    expect(readCard(sampleWith('toy.name', cleaned))).toMatchObject({ ok: true, card: { toy: { name: cleaned } } });
  });

  it('counts letters, not bytes', () => {
    expect(readCard(sampleWith('toy.name', '🧸'.repeat(80)))).toMatchObject({ ok: true });
    expect(readCard(sampleWith('toy.name', '🧸'.repeat(81)))).toMatchObject({ ok: false, fault: { code: 'too-long' } });
  });

  it('keeps the lines of a note', () => {
    expect(readCard(sampleWith('note', 'Soft.\r\n\r\n\r\nWashed\u0000 twice. '))).toMatchObject({
      card: { note: 'Soft.\n\nWashed twice.' },
    });
  });
});
