import { describe, expect, test } from 'vitest';
import type { Draft } from '../../app/drafting/draft-types';
import { depth } from '../measured/hoods';
import { edgeNamed, lengthNamed, made, reading } from '../measured/made';
import { buildCard, builds } from '../toys/builds';
import { handDrafted } from '../toys/hand-drafted';

/** A hood as flat-pattern handbooks draw it; shares and limits are common practice, no source. */
const cards = builds.map((build) => buildCard(build));
const hooded = (card: (typeof cards)[number], choices = {}): Draft => {
  const draft = made(card, 'hooded-top', { choices });
  if (!draft) throw new RangeError(`${card.toy.name} refused`);
  return draft;
};
const fitAt = (draft: Draft, place: string) => draft.fit.find((row) => row.place === place)?.garment ?? Number.NaN;
const gap = (draft: Draft) => 2 * lengthNamed(draft, 'front', 'chin');
const settings = [{}, { hood: 'two' }, { hood: 'three' }, { ears: 'open' }, { chin: 'meet' }];

describe.each(cards.map((card) => [card.toy.name, card] as const))('a hood for %s', (_, card) => {
  test.each(settings)('is as deep over everything as its fit says: %j', (choices) => {
    const draft = hooded(card, choices);
    expect(Math.abs(depth(draft) - fitAt(draft, 'hood-depth'))).toBeLessThan(0.6);
    expect(fitAt(draft, 'hood-depth')).toBeLessThanOrEqual(reading(card, 'hood-depth') * 1.06 + 6);
  });

  test('goes round the face with 0–2 % of ease', () => {
    const over = fitAt(hooded(card), 'face') / reading(card, 'face-edge') - 1;
    expect(over).toBeGreaterThanOrEqual(0);
    expect(over).toBeLessThanOrEqual(0.02 + 1e-9);
  });

  test('is as long over the head as the arc, or 5 % more', () => {
    const over = fitAt(hooded(card), 'crown') / reading(card, 'crown-arc');
    expect(over).toBeGreaterThan(0.999);
    expect(over).toBeLessThan(1.051);
  });

  test('leaves 20–40 mm free under the chin, or none where the maker wants it closed', () => {
    expect(gap(hooded(card))).toBeGreaterThanOrEqual(20 - 1e-6);
    expect(gap(hooded(card))).toBeLessThanOrEqual(40 + 1e-6);
    expect(edgeNamed(hooded(card, { chin: 'meet' }), 'front', 'chin')).toBeUndefined();
  });

  test('has its fullness behind the shoulders, each pleat marked by its fold and its place', () => {
    const draft = hooded(card);
    const seam = (name: string) => draft.seams.find((each) => each.name === name);
    expect(seam('hood-neck-front')?.join).toBe('sewn');
    const full = (seam('hood-neck-back')?.secondLength ?? 0) - (seam('hood-neck-back')?.firstLength ?? 0);
    const lines = draft.pieces.find((piece) => piece.name === 'hood')?.lines ?? [];
    const at = (name: string) => lines.find((each) => each.name === name)?.path[0]?.from;
    const marked = lines
      .filter(({ name }) => name.startsWith('fold-'))
      .reduce((sum, { name }) => {
        const [fold, place] = [at(name), at(name.replace('fold', 'place'))];
        return sum + (fold && place ? Math.hypot(fold.x - place.x, fold.y - place.y) : Number.NaN);
      }, 0);
    expect(Math.abs(marked - full)).toBeLessThan(1);
  });

  test('is sewn to the neck in one go', () => {
    const steps = hooded(card).sewing.filter(({ seams }) => seams.includes('hood-neck-back'));
    expect(steps.map(({ seams }) => seams)).toEqual([['hood-neck-front', 'hood-neck-back']]);
  });
});

test('a guessed crown or depth never decides how a hood is made', () => {
  for (const left of ['crown-arc', 'hood-depth']) {
    const card = cards[0];
    if (!card) throw new RangeError('no build');
    const readings = Object.fromEntries(Object.entries(card.readings).filter(([id]) => id !== left));
    expect(hooded({ ...card, readings }).order.choices.hood).toBe('two');
  }
  expect(hooded(handDrafted).order.choices.hood).toBe('two');
});

test('a hooded top for a firm toy opens in front', () => {
  const doll = cards.find((card) => card.toy.traits.stuffing === 'firm');
  expect(doll && hooded(doll).order.choices.opening).toBe('front');
});
