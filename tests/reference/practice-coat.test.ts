import { expect, test } from 'vitest';
import { brokenIn } from '../holds';
import { lengthNamed, made, reading } from '../measured/made';
import { randomCard, seeded } from '../toys/random';

/** Dogs, horses, dachshunds: any of these legs and lengths. */
const cards = Array.from({ length: 12 }, (_, n) => randomCard(seeded(40 + n), 'four-legged', { full: true }));

test('chest tabs lap by a quarter of the chest, 4 in on 16 in (common practice, no source), beyond the neck', () => {
  for (const card of cards) {
    const draft = made(card, 'coat');
    if (!draft) throw new RangeError(card.toy.name);
    expect(brokenIn(draft)).toEqual([]);
    const [neck, chest] = [reading(card, 'neck-girth'), reading(card, 'chest-girth')];
    const lap = 2 * lengthNamed(draft, 'coat', 'top') - (draft.fit[0]?.garment ?? 0);
    expect(lap).toBeCloseTo(chest / 4, 2);
    expect(draft.fit[0]?.garment ?? 0).toBeGreaterThan(neck);
  }
});

test('coat and belly band go round the chest, eased, and both ends of the band lap', () => {
  for (const card of cards) {
    const draft = made(card, 'coat');
    const wide = Math.max(...(draft?.pieces[0]?.seamLine ?? []).map(({ to }) => to.x));
    const band = 2 * (draft ? lengthNamed(draft, 'belly-band', 'top') : 0);
    expect(2 * wide + band - reading(card, 'chest-girth')).toBeGreaterThan(2 * 15 + 6);
  }
});
