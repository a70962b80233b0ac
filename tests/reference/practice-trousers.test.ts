import { describe, expect, test } from 'vitest';
import type { Card } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { findGarment } from '../../app/drafting/garments';
import { easedCrotch } from '../../app/drafting/sizes/leg';
import { brokenIn } from '../holds';
import { type Chosen, lengthNamed, made, reading } from '../measured/made';
import { type Build, buildCard, builds } from '../toys/builds';

/** Invented toys that trousers are hard on; beside these, common practice, no source. */
const [bear, rabbit, doll, tiny] = builds as [Build, Build, Build, Build];
const toys: readonly (readonly [string, Card])[] = [
  [
    'a round-bottomed sitting bear',
    buildCard({
      ...bear,
      form: {
        ...bear.form,
        trunk: { ...bear.form.trunk, hip: 1.08, waist: 1.02 },
        leg: { ...bear.form.leg, rise: 0.56, thigh: 0.42 },
      },
    }),
  ],
  [
    'long thin legs, standing',
    buildCard({ ...doll, form: { ...doll.form, leg: { ...doll.form.leg, thigh: 0.22, stride: 210 } } }),
  ],
  [
    'long thin legs, sitting',
    buildCard({
      ...rabbit,
      traits: { posture: 'sits' },
      form: { ...rabbit.form, leg: { ...rabbit.form.leg, thigh: 0.26, stride: 230 } },
    }),
  ],
  ['legs sewn together', buildCard({ ...tiny, traits: { ...tiny.traits, legs: 'sewn' } })],
  [
    'a knob tail',
    buildCard({ ...bear, form: { ...bear.form, tail: { root: 0.16, thick: 2.6, high: 0.8 } } }, { posture: 'stands' }),
  ],
  ['feet larger than legs', buildCard({ ...doll, form: { ...doll.form, leg: { ...doll.form.leg, foot: 1.7 } } })],
];

const garment = findGarment('trousers');
const values: readonly Chosen[] = [
  {},
  ...Object.entries(garment?.choices ?? {}).flatMap(([name, choice]) =>
    (choice.kind === 'one' ? choice.of : []).map((value) => ({ [name]: value })),
  ),
];

const drafts = toys.flatMap(([name, card]) =>
  values.map((choices) => ({ name, card, choices, draft: made(card, 'trousers', { choices }) })),
);
const drawn = drafts.flatMap(({ draft, ...rest }) => (draft ? [{ ...rest, draft }] : []));
const legged = drawn.filter(({ draft }) => draft.order.choices.legs !== 'tube' && !isTube(draft));

function isTube({ pieces }: Draft): boolean {
  return !pieces.some(({ edges }) => edges.some(({ name }) => name === 'back-inseam'));
}

describe('trousers for toys that are hard to fit', () => {
  test('each is drafted in each choice, and nothing is broken', () => {
    expect(drafts.filter(({ draft }) => !draft).map(({ name, choices }) => [name, choices])).toEqual([]);
    const broken = drawn.map(({ name, choices, draft }) => [name, choices, ...brokenIn(draft)]);
    expect(broken.filter((row) => row.length > 2)).toEqual([]);
  });

  test('so are pants, a nappy, dungarees and a romper as they come', () => {
    const orders = [['pants'], ['pants', { pants: 'nappy' }], ['dungarees'], ['romper']] as const;
    const faults = toys.flatMap(([name, card]) =>
      orders.flatMap(([id, choices = {}]) => {
        const draft = made(card, id, { choices });
        return (draft ? brokenIn(draft) : ['refused']).map((fault) => `${name}, ${id}: ${fault}`);
      }),
    );
    expect(faults).toEqual([]);
  });

  test('the crotch seam, its gusset with it, is the crotch eased, or it is said how low it hangs', () => {
    for (const { card, draft } of legged) {
      const seam =
        ['front-crotch', 'back-above', 'tail-closure', 'tail', 'back-crotch'].reduce(
          (sum, edge) => sum + lengthNamed(draft, 'leg', edge),
          0,
        ) + lengthNamed(draft, 'gusset', 'centre');
      const aim = easedCrotch(reading(card, 'crotch-length'), card.toy.traits?.posture ?? 'sits', 0.25);
      const hangs = draft.flags.find(({ code }) => code === 'crotch-hangs')?.values.by;
      expect(seam - (hangs ?? 0)).toBeGreaterThan(aim - 0.2);
      expect(seam - (hangs ?? 0)).toBeLessThan(aim + 6.2);
    }
  });

  test('a leg is at most 1.35 times what the thigh asks at its top, or it is said', () => {
    for (const { draft } of legged) {
      const row = draft.fit.find(({ place }) => place === 'thigh');
      const said = draft.flags.some(({ code }) => code === 'leg-wide');
      const foot = draft.fit.find(({ place }) => place === 'leg-hem')?.body ?? 0;
      const least = Math.max((row?.body ?? 0) + 10, foot * 0.95);
      if (!said) expect(row?.garment).toBeLessThan(1.4 * least);
      const flares = draft.flags.some(({ code }) => code === 'feet-over-legs');
      if (draft.order.choices.trousers === 'short') expect(flares).toBe(false);
    }
    expect(legged.some(({ draft }) => draft.flags.some(({ code }) => code === 'leg-wide'))).toBe(true);
  });

  test('sewn-together legs get a tube, and it is said; where the tail comes out nothing is sewn shut', () => {
    for (const { name, card, choices, draft } of drawn) {
      if (name === 'legs sewn together') {
        expect(isTube(draft)).toBe(true);
        if (choices.legs !== 'tube') expect(draft.adjustments.map(({ code }) => code)).toContain('legs-in-a-tube');
      }
      if (name === 'a knob tail' && choices.tail !== 'covered') {
        const opens = choices.tail !== 'open';
        const short = draft.flags.find(({ code }) => code === 'tail-slit-short')?.values.by ?? 0;
        expect(draft.order.choices.tail, JSON.stringify(choices)).toBe(opens ? 'waist' : 'open');
        expect(lengthNamed(draft, 'leg', 'tail-closure') > 20).toBe(opens);
        expect(2 * (lengthNamed(draft, 'leg', 'tail') + short)).toBeGreaterThan(
          reading(card, opens ? 'tail-base-girth' : 'tail-girth'),
        );
      }
    }
  });

  test('a seat with more of its crotch behind gets a longer back and a shorter front, and the same seam in all; a waist to waist that nobody parted is parted as before', () => {
    const crotch = reading(sitter, 'crotch-length');
    const parted = [0.42, 0.4, 0.38].map((share) => sides(made(withFront(share * crotch), 'trousers')));
    for (const [index, { front, back }] of parted.entries()) {
      const before = parted[index - 1];
      if (before) {
        // 1.08 of 2 % of the crotch goes from the front to the back.
        expect(before.front - front).toBeCloseTo(1.08 * 0.02 * crotch, 0);
        expect(back - before.back).toBeCloseTo(1.08 * 0.02 * crotch, 0);
      }
      expect(front + back).toBeCloseTo((parted[0]?.front ?? 0) + (parted[0]?.back ?? 0), 0);
    }
    const unparted = sides(made(withFront(null), 'trousers'));
    expect(parted.map(({ front }) => Math.sign(front - unparted.front))).toContain(1);
    expect(unparted.front + unparted.back).toBeCloseTo((parted[0]?.front ?? 0) + (parted[0]?.back ?? 0), 0);
  });
});

const sitter = toys[0]?.[1] ?? buildCard(bear);
function withFront(front: number | null): Card {
  const { 'front-crotch': _, ...readings } = sitter.readings;
  return { ...sitter, readings: front === null ? readings : { ...readings, 'front-crotch': [front] } };
}
function sides(draft: Draft | null) {
  if (!draft) throw new RangeError('refused');
  const back = ['back-above', 'tail-closure', 'tail', 'back-crotch'].map((edge) => lengthNamed(draft, 'leg', edge));
  const gusset = lengthNamed(draft, 'gusset', 'centre') / 2;
  return {
    front: lengthNamed(draft, 'leg', 'front-crotch') + gusset,
    back: back.reduce((sum, length) => sum + length, 0) + gusset,
  };
}
