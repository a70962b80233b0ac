import { describe, expect, it } from 'vitest';
import { type Flag, judge, type MeasureId, parseLength } from '../../app/body';
import { bodyFrom } from '../../app/measuring';
import { believedOf, guessedFrom } from '../../app/screens/shared/making/believed';
import { flagWords } from '../../app/screens/shared/making/flag-words';
import type { Reading, Toy } from '../../app/storage';
import { createSay } from '../../app/words';

const say = await createSay('en-US');
const inches = { unit: 'in', locale: 'en-US' } as const;
const centimetres = { unit: 'cm', locale: 'en-US' } as const;

type Readings = { readonly [M in MeasureId]?: readonly number[] };
type Typed = { readonly [M in MeasureId]?: string };

function bodyOf(typed: Typed) {
  const readings = Object.fromEntries(
    Object.entries(typed).map(([id, text]) => {
      const parsed = parseLength(text, inches);
      if (!parsed.ok) throw new RangeError(text);
      return [id, [parsed.mm]];
    }),
  );
  return bodyFrom({ toy: { body: 'upright', traits: {} }, readings });
}

const doubts = (typed: Typed, hand: typeof inches | typeof centimetres = inches) => {
  const body = bodyOf(typed);
  const asked = judge(body, {}).filter(({ severity }) => severity !== 'note');
  return asked.map((flag) => flagWords({ say, hand }, flag, body));
};

const bear = { 'head-girth': '14', 'neck-girth': '9 1/2', 'chest-girth': '15 1/4', 'waist-girth': '15' };

describe('a doubt’s sentence', () => {
  it('says each number of the measure it is the number of, whichever is doubted more', () => {
    for (const others of [bear, { 'chest-girth': '17', 'waist-girth': '17', 'hem-girth': '17' }, {}]) {
      const [first] = doubts({ ...others, 'front-width': '18', 'body-girth': '17' });
      expect(first).toBe('Front width is 18\u00a0in, but all the way round is only 17\u00a0in.');
    }
  });

  it('quotes what was typed in the unit it was typed in', () => {
    expect(doubts({ ...bear, 'waist-girth': '15 cm' })[0]).toContain('15\u00a0cm');
    expect(doubts({ ...bear, 'head-girth': '5 1/2' }, centimetres)[0]).toContain('5½\u00a0in');
    const [mixed] = doubts({ ...bear, 'front-width': '46 cm', 'body-girth': '17' }, centimetres);
    expect(mixed).toBe('Front width is 46\u00a0cm, but all the way round is only 17\u00a0in.');
  });

  it('tells what is likely in the unit of the number it doubts', () => {
    const [doubt] = doubts({ ...bear, 'waist-girth': '15 cm' });
    expect(doubt).toMatch(/15\u00a0cm is unusual.* \d+(\.\d)?\scm/);
  });
});

describe('what cannot be', () => {
  const toy = { id: 't', name: 'Moss', kind: 'upright', traits: {} } as unknown as Toy;
  const reading = (mm: number) => ({ mm, from: 'tape' }) as Reading;
  const good = { 'chest-girth': [reading(390)], 'waist-girth': [reading(398)], 'hip-girth': [reading(420)] };
  const readings = { ...good, 'body-girth': [reading(430)], 'front-width': [reading(900)] };
  const numbers: Readings = Object.fromEntries(
    Object.entries(readings).map(([id, taken]) => [id, taken.map(({ mm }) => mm)]),
  );
  const read = bodyFrom({ toy: { body: 'upright', traits: {} }, readings: numbers });
  const flags: readonly Flag[] = judge(read, {});

  it('tells nothing of what is guessed', () => {
    expect(flags[0]).toMatchObject({ severity: 'impossible', measures: ['front-width', 'body-girth'] });
    const believed = believedOf({ toy, readings }, flags);
    const { sizes } = guessedFrom(believed ?? read, read);
    const { 'front-width': _, ...rest } = numbers;
    const without = bodyFrom({ toy: { body: 'upright', traits: {} }, readings: rest });
    expect(sizes['hem-girth']).toEqual(without.sizes['hem-girth']);
    expect(sizes['hem-girth']?.value).not.toBeCloseTo(read.sizes['hem-girth']?.value ?? 0, 1);
    expect(sizes['front-width']?.value).toBe(900);
  });

  it('tells nothing of what others should have been', () => {
    const wrong = { ...numbers, 'hip-girth': [165] };
    const [, doubt] = judge(bodyFrom({ toy: { body: 'upright', traits: {} }, readings: wrong }), {});
    const { 'front-width': _, ...rest } = wrong;
    const [same] = judge(bodyFrom({ toy: { body: 'upright', traits: {} }, readings: rest }), {});
    expect(doubt?.measures).toEqual(['hip-girth']);
    expect(doubt?.values.expected).toBeCloseTo(same?.values.expected ?? 0, 9);
    expect(doubt?.values.offer).toBe(same?.values.offer);
  });

  it('is nobody’s where nothing is doubted', () => {
    expect(believedOf({ toy, readings: good }, [])).toBeNull();
    expect(guessedFrom(read, read)).toBe(read);
  });
});
