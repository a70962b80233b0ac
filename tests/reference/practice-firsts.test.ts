import { describe, expect, test } from 'vitest';
import { type Card, usualTraits } from '../../app/body';
import { findGarment } from '../../app/drafting/garments';
import { curvature } from '../../app/drafting/geometry';
import { easedCrotch } from '../../app/drafting/sizes/leg';
import { asking } from '../../app/measuring';
import { edgeNamed, lengthNamed, made, reading } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

// Beside these, common practice, no source.
const cards = builds.map((build) => buildCard(build));
const drafts = (id: string, choices = {}) =>
  cards.flatMap((card) => {
    const draft = made(card, id, { choices });
    return draft ? [{ card, draft }] : [];
  });
const thinArms = (card: Card): Card => ({
  ...card,
  readings: { ...card.readings, 'upper-arm-girth': [16], 'paw-girth': [15], 'arm-root-girth': [80] },
});

describe('a simple top, its sleeves cut in one', () => {
  const tops = ['long', 'short'].flatMap((sleeve) => drafts('simple-top', { sleeve }));

  test('is asked of eight numbers at most, the height with them', () => {
    const needs = findGarment('simple-top')?.needs ?? [];
    expect(asking({ kind: 'upright', traits: usualTraits }, needs).asked.length).toBeLessThan(9);
  });

  test('turns under the arm on a radius of 10 mm or more', () => {
    for (const { draft } of tops) {
      const bends = (edgeNamed(draft, 'front', 'underarm')?.path ?? []).map((curve) => Math.abs(curvature(curve, 0.5)));
      expect(1 / Math.max(...bends)).toBeGreaterThan(9.99);
    }
  });

  test('has two sleeves alike before and behind, round the arm and past the paw', () => {
    for (const { card, draft } of tops) {
      for (const edge of ['shoulder', 'cuff', 'underarm'])
        expect(lengthNamed(draft, 'front', edge)).toBeCloseTo(lengthNamed(draft, 'back', edge), 3);
      const bicep = draft.fit.find(({ place }) => place === 'bicep')?.garment ?? 0;
      expect(bicep).toBeGreaterThanOrEqual(reading(card, 'upper-arm-girth') + 10);
    }
  });

  test('says where set-in sleeves would fit much closer: round thick arms on a round tummy', () => {
    const told = tops.flatMap(({ card, draft }) => {
      const chest = draft.fit.find(({ place }) => place === 'chest');
      const advised = draft.flags.some(({ code }) => code === 'arms-thick-in-one');
      return [{ toy: card.toy.name, advised, full: (chest?.garment ?? 0) / (chest?.body ?? 1) }];
    });
    expect(told.filter(({ advised }) => advised).map(({ toy }) => toy)).toEqual(['bear', 'bear']);
    for (const { advised, full } of told) expect(full > 1.3).toBe(advised);
  });
});

test('a sleeve under 30 mm round is not set in but cut in one, and that is said', () => {
  for (const id of ['tee', 'hooded-top', 'nightshirt', 'dress']) {
    const draft = made(thinArms(cards[2] as Card), id, { choices: { sleeve: 'short' } });
    expect(draft?.order.choices.armhole, id).toBe('in-one');
    expect(draft?.adjustments.map(({ code }) => code)).toContain('in-one-instead');
    expect(draft?.pieces.some(({ name }) => name === 'sleeve')).toBe(false);
  }
});

describe('pants', () => {
  test('are as long between the legs as the crotch, eased for how the toy sits, and their strips as long as their legs', () => {
    for (const { card, draft } of drafts('pants')) {
      const posture = card.toy.traits?.posture ?? 'sits';
      const eased = easedCrotch(reading(card, 'crotch-length'), posture, 0.3);
      expect(Math.abs(lengthNamed(draft, 'pants', 'centre') - eased)).toBeLessThan(1);
      expect(2 * lengthNamed(draft, 'leg-casing', 'top')).toBeCloseTo(lengthNamed(draft, 'pants', 'leg'), 3);
      expect(lengthNamed(draft, 'pants', 'leg')).toBeGreaterThan(reading(card, 'thigh-girth') + 10);
    }
  });

  test('round legs sewn together are a tube, and that is said; nothing goes between them', () => {
    const sewn = cards.map((card) => ({
      ...card,
      toy: { ...card.toy, traits: { ...card.toy.traits, legs: 'sewn' as const } },
    }));
    for (const pants of ['pants', 'nappy']) {
      const draft = made(sewn[0] as Card, 'pants', { choices: { pants } });
      expect(draft?.pieces.map(({ name }) => name)).toEqual(['pants-tube']);
      expect(draft?.adjustments.map(({ code }) => code)).toContain('pants-in-a-tube');
    }
  });
});

test('a romper is longer over the shoulder and between the legs than the toy, most for one that sits', () => {
  for (const { card, draft } of drafts('romper')) {
    const loop = draft.fit.find(({ place }) => place === 'loop');
    const share = card.toy.traits?.posture === 'stands' ? 1.03 : 1.06;
    expect((loop?.garment ?? 0) / reading(card, 'body-loop')).toBeGreaterThan(share - 1e-6);
  }
});

test("dungarees' bib stands inside the front, below the casing that their elastic runs through all round", () => {
  for (const { card, draft } of drafts('dungarees')) {
    const bib = 2 * lengthNamed(draft, 'bib-front', 'top');
    const elastic = draft.notions.find(({ kind, place }) => kind === 'elastic' && place === 'waist');
    expect(elastic?.length).toBeCloseTo(0.9 * reading(card, 'waist-girth') + 20, 3);
    expect(lengthNamed(draft, 'bib-front', 'bottom')).toBeCloseTo(lengthNamed(draft, 'leg', 'bib-place'), 3);
    expect(bib / 2).toBeLessThan(lengthNamed(draft, 'leg', 'waist') / 2);
  }
});

test("a hat's brim meets the hat inside, and falls: outside it is longer, but less than a ring that lies flat", () => {
  for (const { draft } of drafts('hat', { brim: 'brim', hatEars: 'covered' })) {
    const [inner, outer, wide] = ['top', 'bottom', 'side'].map((edge) => lengthNamed(draft, 'brim', edge));
    expect(inner).toBeCloseTo(6 * lengthNamed(draft, 'gore', 'brim'), 3);
    expect(outer).toBeGreaterThan(inner ?? 0);
    expect(outer).toBeLessThan((inner ?? 0) + Math.PI * (wide ?? 0));
  }
});
