import { describe, expect, it } from 'vitest';
import { type Card, judge, type MeasureId } from '../../app/body';
import { bodyFrom, demoCards } from '../../app/measuring';

const [bramble] = demoCards;
if (!bramble) throw new Error('no demo toy');
const bare = bramble;
const read = (id: MeasureId) => bramble?.readings[id]?.[0] ?? 0;

/** The first flag of the first demo toy with some readings changed. */
function first(readings: Card['readings']) {
  if (!bramble) throw new Error('no demo toy');
  return judge(bodyFrom({ ...bramble, readings: { ...bramble.readings, ...readings } }), {})[0];
}

describe('a reading that does not fit the others', () => {
  it.each<[string, string, MeasureId, (value: number) => number]>([
    ['inches typed as centimetres', 'unit-slip', 'head-girth', (value) => value / 2.54],
    ['centimetres typed as inches', 'unit-slip', 'upper-arm-girth', (value) => value * 2.54],
    ['a point left out', 'tenfold', 'paw-girth', (value) => value * 10],
    ['a point too many', 'tenfold', 'face-edge', (value) => value / 10],
  ])('is found and mended: %s', (_, code, id, slip) => {
    const flag = first({ [id]: [slip(read(id))] });
    expect(flag?.measures[0]).toBe(id);
    expect(flag?.values.offer).toBeCloseTo(read(id), 6);
    if (flag?.severity === 'unlikely') expect(flag.code).toBe(code);
  });

  it('offers what was meant with a digit typed twice', () => {
    const flag = first({ 'paw-girth': [1170] });
    expect(flag?.measures[0]).toBe('paw-girth');
    expect(Math.abs((flag?.values.offer ?? 0) - 170)).toBeLessThan(60);
  });

  it('finds two read into each other’s places, and offers both', () => {
    const flag = first({ 'body-length': [read('hood-depth') * 3], 'hood-depth': [50] });
    expect(flag?.measures.some((id) => id === 'hood-depth' || id === 'body-length')).toBe(true);
    const swapped = first({ 'arm-length': [read('face-edge')], 'face-edge': [read('arm-length')] });
    expect(swapped).toMatchObject({ code: 'swapped', severity: 'unlikely' });
    expect([...(swapped?.measures ?? [])].sort()).toEqual(['arm-length', 'face-edge']);
    const offers = swapped?.measures.map((id, at) => [id, at === 0 ? swapped.values.offer : swapped.values.otherOffer]);
    expect(Object.fromEntries(offers ?? [])).toEqual({
      'arm-length': read('arm-length'),
      'face-edge': read('face-edge'),
    });
  });

  it('is said once, not again by every rule it breaks', () => {
    if (!bramble) throw new Error('no demo toy');
    const readings = { ...bramble.readings, 'upper-arm-girth': [read('upper-arm-girth') * 2.54] };
    const flags = judge(bodyFrom({ ...bramble, readings }), {});
    expect(flags.map((flag) => flag.code)).toEqual(['unit-slip']);
  });

  it('names what is no length at all before what it spoils', () => {
    const flag = first({ 'body-girth': [4300] });
    expect(flag).toMatchObject({ code: 'not-a-length', measures: ['body-girth'] });
  });

  it('takes two readings to doubt one, and one is not doubted by what is guessed from it', () => {
    const of = (readings: Card['readings']) => judge(bodyFrom({ toy: { body: 'upright', traits: {} }, readings }), {});
    expect(of({ 'waist-girth': [400], 'hip-girth': [170] })).toHaveLength(1);
    expect(of({ 'waist-girth': [400], 'hip-girth': [425] })).toEqual([]);
    expect(of({ 'waist-girth': [400] })).toEqual([]);
  });

  it('is quoted as it was typed, and raises one doubt', () => {
    const flags = judge(bodyFrom({ ...bare, readings: { ...bare.readings, 'body-girth': [428.625 / 2.54] } }), {});
    expect(flags.filter(({ severity }) => severity !== 'note')).toHaveLength(1);
    expect(Object.values(flags[0]?.values ?? {})).toContain(428.625 / 2.54);
  });

  it('is not corrected where it is not clear what was meant', () => {
    const readings = { 'waist-girth': [400], 'hip-girth': [170], 'waist-to-hem': [180] };
    const [flag] = judge(bodyFrom({ toy: { body: 'upright', traits: {} }, readings }), {});
    expect(flag?.measures).toEqual(['hip-girth']);
    expect(flag?.values).toMatchObject({ value: 170 });
    expect(flag?.values).not.toHaveProperty('offer');
  });

  it('does not mind the size of the toy', () => {
    if (!bramble) throw new Error('no demo toy');
    const half = Object.entries(bramble.readings).map(([id, taken]) => [id, taken.map((each) => each / 2)]);
    expect(judge(bodyFrom({ ...bramble, readings: Object.fromEntries(half) }), {})).toEqual([]);
  });
});
