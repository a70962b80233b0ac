import { expect, test } from 'vitest';
import { neckEnd } from '../../app/drafting/curves/barrel';
import { draft, fullOrder } from '../../app/drafting/draft';
import { bodyFrom } from '../../app/measuring';
import { brokenIn } from '../holds';
import { gluedFaults } from '../holds/glued';
import { guideFaults } from '../holds/guide';
import { lengthNamed, made, reading } from '../measured/made';
import { randomCard, seeded } from '../toys/random';

/** Dogs, horses, dachshunds: any of these legs and lengths. */
const cards = Array.from({ length: 6 }, (_, n) => randomCard(seeded(40 + n), 'four-legged', { full: true }));
const ways = [
  {},
  { closes: 'back', coatNeck: 'collar', coatLegs: 'sleeves' },
  { coatNeck: 'collar', hem: 'raw' },
  { coatLegs: 'sleeves', dresser: 'small-child' },
  { coatNeck: 'hood', hood: 'three', ears: 'open' },
  { coatNeck: 'hood', closes: 'back', chin: 'meet', coatLegs: 'turned' },
] as const;

test('a tube cut aslant has its corner where geometry says: equal seams of a plain tube, both edges turned alike', () => {
  // A tube 400 round, its end cut so that the back is 40 longer: unrolled with two seams, both edges fall 20 to the corner.
  const [half, slant] = [200, 40];
  const asked = { backHalf: 120, bellyHalf: 80, backLong: 100 + slant, bellyLong: 100 };
  // The edge is longer than the tube is round by what the slant adds; each half is an arc of the same turn.
  const turn = 2 * Math.atan(slant / half);
  const edge = (half * turn) / Math.sin(turn);
  const found = neckEnd({ ...asked, bellyNeck: 80, neck: edge });
  expect(found?.lean).toBe(0);
  expect(found?.backTurn).toBeCloseTo(turn, 6);
  expect(found?.bellyTurn).toBeCloseTo(turn, 6);
  expect(found?.backNeck).toBeCloseTo(120, 4);
});

test('no corner is found where the neck could not be reached', () => {
  const asked = { backHalf: 120, bellyHalf: 80, bellyNeck: 20, backLong: 30, bellyLong: 25 };
  expect(neckEnd({ ...asked, neck: 60 })).toBeNull();
});

test('seams match, holes go round the leg eased, the neck is as asked, and glued it is one surface with neck, hem and two holes', () => {
  let drafted = 0;
  for (const card of cards) {
    for (const choices of ways) {
      const coat = made(card, 'fitted-coat', { choices });
      if (!coat) continue;
      drafted++;
      expect([...brokenIn(coat), ...gluedFaults(coat), ...guideFaults(coat)]).toEqual([]);
      for (const side of ['fore-side', 'hind-side'])
        expect(lengthNamed(coat, 'coat-back', side)).toBeCloseTo(lengthNamed(coat, 'coat-belly', side), 3);
      const hole = lengthNamed(coat, 'coat-back', 'leg') + lengthNamed(coat, 'coat-belly', 'leg');
      expect(hole).toBeGreaterThanOrEqual(1.12 * reading(card, 'front-leg-girth') - 0.01);
      expect(lengthNamed(coat, 'coat-back', 'leg')).toBeLessThanOrEqual(hole / 2 + 0.01);
    }
  }
  expect(drafted).toBeGreaterThanOrEqual(0.8 * cards.length * ways.length);
});

test('a chest that falls too steeply to the neck is refused, and the simple coat named', () => {
  const dog = cards[0];
  if (!dog) throw new RangeError('no toys');
  const neck = reading(dog, 'chest-girth') * 0.45;
  const long = { 'neck-girth': [neck], 'neck-to-leg': [neck / 6], 'nape-to-leg': [neck / 5] };
  const order = fullOrder({ garment: 'fitted-coat' }, dog.taken);
  if (!order.ok) throw new RangeError(order.fault.code);
  const body = bodyFrom({ ...dog, readings: { ...dog.readings, ...long } });
  const outcome = draft(body, order.order, order.garment, dog.toy.name);
  expect(outcome.ok ? [] : outcome.flags.map(({ code }) => code)).toEqual(['coat-corner-not-drawn', 'wears-coat']);
});

test('a belly far smaller than the chest, over a short way and back, is taken in no more than the side can follow', () => {
  const dog = cards[0];
  if (!dog) throw new RangeError('no toys');
  const less = {
    'belly-girth': [reading(dog, 'chest-girth') / 10],
    'under-length': [15],
    'back-length': [reading(dog, 'nape-to-leg')],
  };
  const coat = made({ ...dog, readings: { ...dog.readings, ...less } }, 'fitted-coat');
  expect(coat ? brokenIn(coat) : ['refused']).toEqual([]);
});

test('a neck that is held high is believed, and it is said where the coat will pull; a level one is not spoken of', () => {
  const dog = cards[0];
  if (!dog) throw new RangeError('no toys');
  const flagged = (throat: number, nape: number) => {
    const long = reading(dog, 'back-length');
    const readings = { ...dog.readings, 'neck-to-leg': [throat * long], 'nape-to-leg': [nape * long] };
    const coat = made({ ...dog, readings }, 'fitted-coat');
    expect(coat ? brokenIn(coat) : ['refused']).toEqual([]);
    return (coat?.flags ?? []).map(({ code }) => code);
  };
  const raised = flagged(0.52, 0.26);
  expect(raised).toContain('coat-neck-raised');
  expect(raised).not.toContain('swapped');
  expect(flagged(0.3, 0.38)).not.toContain('coat-neck-raised');
});

test('what a hood leaves open for ears is turned before the hood is sewn on', () => {
  const steps = cards.flatMap((card) => {
    const coat = made(card, 'fitted-coat', { choices: { coatNeck: 'hood', hood: 'three', ears: 'open' } });
    return coat?.order.choices.ears === 'open' ? [coat.sewing.map(({ seams }) => seams.join('+'))] : [];
  });
  expect(steps.length).toBeGreaterThan(0);
  for (const step of steps) {
    const at = (seam: string) => step.findIndex((names) => names.split('+').includes(seam));
    expect(at('ear-edge')).toBeGreaterThan(at('hood-crown-back'));
    expect(at('ear-edge')).toBeLessThan(at('hood-neck-front'));
  }
});

test('a thin neck near the legs of a deep chest is drawn, and it is said that its corner is steep; of a thick one it is not', () => {
  const [dog] = cards;
  if (!dog) throw new RangeError('no toys');
  const flagged = (neck: number) => {
    const lengths = { 'neck-to-leg': [82], 'nape-to-leg': [112], 'back-length': [246], 'under-length': [72] };
    const girths = { 'neck-girth': [neck], 'chest-girth': [412], 'belly-girth': [430], 'leg-spread': [44] };
    const legs = { 'front-leg-girth': [116], 'foot-girth': [104] };
    const coat = made({ ...dog, readings: { ...dog.readings, ...lengths, ...girths, ...legs } }, 'fitted-coat');
    expect(coat ? brokenIn(coat) : ['refused']).toEqual([]);
    return (coat?.flags ?? []).map(({ code }) => code);
  };
  expect(flagged(236)).toContain('coat-corner-steep');
  expect(flagged(330)).not.toContain('coat-corner-steep');
});
