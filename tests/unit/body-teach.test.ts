import { expect, test } from 'vitest';
import { type Body, estimate, judge, type MeasureId, teach } from '../../app/body';
import { bodyFrom } from '../../app/measuring';

type Readings = { readonly [M in MeasureId]?: number };

const toyOf = (readings: Readings, taught?: Body['taught']): Body => ({
  ...bodyFrom({
    toy: { body: 'upright', traits: {} },
    readings: Object.fromEntries(Object.entries(readings).map(([id, value]) => [id, [value]])),
  }),
  ...(taught && { taught }),
});

/** A bear with arms of a share of its chest. */
const bear = (chest: number, arm: number): Body =>
  toyOf({
    'head-girth': 1.02 * chest,
    'neck-girth': 0.65 * chest,
    'chest-girth': chest,
    'body-girth': 1.09 * chest,
    'back-body-length': 0.41 * chest,
    'arm-length': arm * chest,
  });

const next: Readings = { 'head-girth': 408, 'neck-girth': 260, 'chest-girth': 400, 'body-girth': 436 };
const armOf = (taught?: Body['taught']) => estimate(toyOf(next, taught), 'arm-length')?.value ?? 0;

test('toys with long arms make the next toy’s arms longer, and more of them more so', () => {
  const one = armOf(teach([bear(350, 0.7)]));
  const three = armOf(teach([bear(350, 0.7), bear(420, 0.68), bear(300, 0.72)]));
  expect(one).toBeGreaterThan(armOf() * 1.05);
  expect(three).toBeGreaterThan(one);
});

test('no store of toys moves a guess by more than a third', () => {
  const strange = Array.from({ length: 20 }, (_, n) => bear(300 + 10 * n, 1.6));
  for (const { shifts } of Object.values(teach(strange)))
    for (const shift of Object.values(shifts)) expect(Math.abs(shift)).toBeLessThanOrEqual(Math.log(4 / 3) + 1e-9);
});

test('a toy taken away teaches no more, and none teach nothing', () => {
  const [usual, long] = [bear(380, 0.47), bear(350, 0.7)];
  expect(teach([usual, long].slice(0, 1))).toEqual(teach([usual]));
  expect(teach([])).toEqual({});
  expect(armOf(teach([]))).toBe(armOf());
});

test('what is doubted in a toy teaches nothing of it', () => {
  const plain = bear(380, 0.47);
  const slipped = toyOf({
    ...Object.fromEntries(
      Object.entries(plain.sizes)
        .filter(([, { from }]) => from === 'tape')
        .map(([id, { value }]) => [id, value]),
    ),
    'arm-length': 0.47 * 3800,
  });
  expect(judge(slipped, {})[0]?.measures[0]).toBe('arm-length');
  expect(Math.abs(armOf(teach([slipped])) / armOf(teach([plain])) - 1)).toBeLessThan(0.1);
});

test('many of one build make it likelier', () => {
  const doll = (chest: number) =>
    toyOf({
      'head-girth': 1.02 * chest,
      'neck-girth': 0.52 * chest,
      'chest-girth': chest,
      'waist-girth': 0.88 * chest,
      'back-body-length': 0.65 * chest,
      'across-shoulders': 0.42 * chest,
    });
  const taught = teach([doll(280), doll(270), doll(290)]);
  expect(taught['play-doll']?.share).toBeGreaterThan(0.3);
});
