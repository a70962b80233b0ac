import { describe, expect, test } from 'vitest';
import type { Card } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { easedCrotch } from '../../app/drafting/sizes/leg';
import { brokenIn } from '../holds';
import { gluedFaults } from '../holds/glued';
import { guideFaults } from '../holds/guide';
import { type Chosen, edgeNamed, lengthNamed, made, reading } from '../measured/made';
import { type Build, buildCard, builds } from '../toys/builds';

const [bear] = builds as [Build];
const knob = { ...bear, form: { ...bear.form, tail: { root: 0.16, thick: 2.6, high: 0.8 } } };
const cards = builds.flatMap((build) => (['sits', 'stands'] as const).map((posture) => buildCard(build, { posture })));

const draftOf = (card: Card, choices: Chosen = {}): Draft => {
  const draft = made(card, 'pants', { choices });
  if (!draft) throw new RangeError(`${card.toy.name} refused`);
  return draft;
};
const sound = (draft: Draft) => [...brokenIn(draft), ...gluedFaults(draft), ...guideFaults(draft)];

/** How far the waist lies from level at its middle, in front and behind, mm: up is more. */
function waists(draft: Draft) {
  const [front, back] = ['front-waist', 'back-waist'].map((name) => edgeNamed(draft, 'pants', name)?.path ?? []);
  const [first, last] = [front?.[0]?.from, front?.at(-1)?.to];
  const [side, middle] = [back?.[0]?.from, back?.[0]?.to];
  return { lowered: (first?.y ?? 0) - (last?.y ?? 0), raised: (middle?.y ?? 0) - (side?.y ?? 0) };
}

describe('a pair of pants', () => {
  test('the waist comes down in front and rises behind, as much of either; the sides stay equal, and the whole as long as the crotch eased', () => {
    for (const card of cards) {
      const draft = draftOf(card);
      const { lowered, raised } = waists(draft);
      expect(lowered).toBeCloseTo(raised, 3);
      expect(lengthNamed(draft, 'pants', 'front-side')).toBeCloseTo(lengthNamed(draft, 'pants', 'back-side'), 6);
      const posture = card.toy.traits?.posture ?? 'sits';
      // A seat that is sat on lies behind by 4 % of the whole at least.
      const crotch = reading(card, 'crotch-length');
      if (posture === 'sits') expect(raised).toBeGreaterThan(0.0399 * crotch);
      const hangs = draft.flags.find(({ code }) => code === 'crotch-hangs')?.values.by ?? 0;
      const whole = draft.fit.find(({ place }) => place === 'crotch')?.garment ?? 0;
      expect(whole - hangs).toBeGreaterThan(easedCrotch(crotch, posture, 0.25) - 0.01);
      expect(sound(draft)).toEqual([]);
    }
  });

  test('the more of its crotch a seat has behind, the higher the waist rises there; steep enough, its casing is a strip', () => {
    const card = buildCard(bear);
    const shares = [0.46, 0.42, 0.38].map((share) => {
      const front = [share * reading(card, 'crotch-length')];
      return draftOf({ ...card, readings: { ...card.readings, 'front-crotch': front } });
    });
    const raised = shares.map((draft) => waists(draft).raised);
    expect(raised).toEqual([...raised].sort((one, other) => one - other));
    expect((raised[2] ?? 0) - (raised[0] ?? 0)).toBeCloseTo(0.08 * 1.08 * reading(card, 'crotch-length'), 0);
    expect(shares.map(({ order }) => order.choices.waist)).toEqual(['turned', 'faced', 'faced']);
    expect(shares.flatMap(sound)).toEqual([]);
    const faced = shares.at(-1) ?? draftOf(card);
    expect(lengthNamed(faced, 'waist-facing', 'top')).toBeCloseTo(
      lengthNamed(faced, 'pants', 'front-waist') + lengthNamed(faced, 'pants', 'back-waist'),
      3,
    );
  });

  test.each([
    [{ tail: false }, 'covered', []],
    [{ tail: true }, 'open', ['back-above', 'tail']],
  ] as const)('round legs sewn together a tube rises behind, and lets a tail (%j) out: %s', (looks, tail, opened) => {
    for (const posture of ['sits', 'stands'] as const) {
      const card = buildCard(bear, { ...looks, posture, legs: 'sewn' });
      const draft = draftOf(card);
      const along = (names: readonly string[]) =>
        names.reduce((sum, name) => sum + lengthNamed(draft, 'pants-tube', name), 0);
      const raised = { sits: 0.3, stands: 0.12 }[posture] * reading(card, 'body-rise');
      expect(along([...opened, 'back-crotch']) - along(['front-crotch'])).toBeCloseTo(raised, 3);
      // A thread round two legs side by side: two halves round, and twice across.
      const thigh = reading(card, 'thigh-girth');
      const elastic = draft.notions.find(({ place }) => place === 'pants-hem')?.length ?? 0;
      expect((elastic - 20) / 0.9).toBeCloseTo(thigh + (2 * thigh) / Math.PI, 3);
      expect(draft.order.choices.tail).toBe(tail);
      expect(sound(draft)).toEqual([]);
    }
  });

  test.each(['pants', 'nappy'])(
    'with a knob tail, %s open from the waist to it, and close above by edges that lap',
    (pants) => {
      const draft = draftOf(buildCard(knob, { tail: true }), { pants });
      expect(draft.order.choices.tail).toBe('waist');
      expect(draft.adjustments.map(({ code }) => code)).toContain('tail-to-waist');
      expect(draft.pieces.find(({ name }) => name === 'pants')).toMatchObject({
        copies: 2,
        mirrored: true,
        onFold: false,
      });
      expect(2 * lengthNamed(draft, 'pants', 'tail')).toBeGreaterThan(reading(buildCard(knob), 'tail-base-girth'));
      expect(lengthNamed(draft, 'pants', 'tail-closure')).toBeGreaterThan(20);
      expect(draft.notions.filter(({ place }) => place === 'tail-closure')).toHaveLength(1);
      expect(sound(draft)).toEqual([]);
    },
  );
});
