import { expect, test } from 'vitest';
import { cloths } from '../../app/body';
import { type Draft, draft, fullOrder } from '../../app/drafting/draft';
import { bodyFrom } from '../../app/measuring';
import { brokenIn } from '../holds';
import { buildCard, builds } from '../toys/builds';

const LAYER_ROUND = 2 * Math.PI;

function made(build: number, garment: string, over?: string): Draft {
  const one = builds[build];
  const full = fullOrder({ garment, ...(over && { over }) }, '2026-11-26');
  if (!one || !full.ok) throw new Error('no such order');
  const outcome = draft(bodyFrom(buildCard(one)), full.order, full.garment, 'Moss');
  if (!outcome.ok) throw new Error('refused');
  return outcome.draft;
}

/** A layer t thick round a girth makes it 2π·t longer outside it (geometry); the toy stays as it was measured. */
test.each([
  [1, 'hooded-top', ['chest', 'bicep']],
  [2, 'tee', ['chest', 'tummy']],
  [0, 'cape', ['over-arms']],
  [1, 'vest', ['chest']],
] as const)('build %i, %s over something thick has room for both', (build, garment, places) => {
  const [bare, over] = [made(build, garment), made(build, garment, 'sweatshirt-fleece')];
  const thickness = cloths.find(({ id }) => id === 'sweatshirt-fleece')?.thickness ?? Number.NaN;
  for (const place of places) {
    const [was, is] = [bare, over].map(({ fit }) => fit.find((row) => row.place === place));
    expect(is?.body).toBe(was?.body);
    expect((is?.garment ?? 0) - (was?.garment ?? 0)).toBeGreaterThan(LAYER_ROUND * thickness - 0.5);
    expect((is?.garment ?? 0) - (was?.garment ?? 0)).toBeLessThan(LAYER_ROUND * thickness * 1.5 + 0.5);
  }
  expect(brokenIn(over)).toEqual([]);
  expect(over.order.over).toBe('sweatshirt-fleece');
  expect(bare.order).not.toHaveProperty('over');
});

test('a cloth that nothing is made of is worn over by nothing', () => {
  const full = fullOrder({ garment: 'tee', over: 'tin' }, '2026-11-26');
  expect(full).toEqual({ ok: false, fault: { code: 'unknown-cloth', where: 'over' } });
});
