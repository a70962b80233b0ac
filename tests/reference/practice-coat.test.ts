import { expect, test } from 'vitest';
import type { Card } from '../../app/body';
import { flatten } from '../../app/drafting/geometry';
import { brokenIn } from '../holds';
import { edgeNamed, lengthNamed, made, reading } from '../measured/made';
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

test('a cape hangs to the belly’s level at its sides and before the legs, and is as long as wished behind (round trunk: geometry)', () => {
  for (const card of cards) {
    const draft = made(card, 'cape');
    if (!draft) throw new RangeError(card.toy.name);
    const [neck, chest, long] = [
      draft.fit[0]?.garment ?? 0,
      reading(card, 'chest-girth'),
      reading(card, 'cape-length'),
    ];
    const centre = lengthNamed(draft, 'cape', 'centre');
    expect(centre).toBeCloseTo(Math.max(long, 22), 1);
    // Half way round the trunk's upper half, and its radius straight down.
    const wide = Math.max(...(draft.pieces[0]?.seamLine ?? []).map(({ to }) => to.x));
    const level = chest / 4 + chest / (2 * Math.PI);
    expect(wide).toBeLessThanOrEqual(Math.max(level, neck / Math.PI + 22) + 0.01);
    if (long > level) expect(wide).toBeGreaterThanOrEqual(level - 0.01);
  }
});

test('its hem leaves the front square and reaches the fold level, without a hollow between', () => {
  for (const card of cards) {
    const hem = edgeNamed(made(card, 'cape') ?? neverMade(card), 'cape', 'bottom')?.path ?? [];
    const points = flatten(hem, 0.05);
    const [first, second] = [points[0], points[1]];
    const [before, last] = points.slice(-2);
    if (!first || !second || !before || !last) throw new RangeError(card.toy.name);
    expect(Math.abs(second.x - first.x)).toBeLessThan(0.1 * Math.abs(second.y - first.y));
    expect(Math.abs(last.y - before.y)).toBeLessThan(0.1 * Math.abs(last.x - before.x));
    const turns = points.slice(2).map((p, n) => {
      const [a, b] = [points[n] ?? p, points[n + 1] ?? p];
      return (b.x - a.x) * (p.y - b.y) - (b.y - a.y) * (p.x - b.x);
    });
    expect(Math.min(...turns)).toBeGreaterThan(-1e-6);
  }
});

function neverMade(card: Card): never {
  throw new RangeError(card.toy.name);
}
