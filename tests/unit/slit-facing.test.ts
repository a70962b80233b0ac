import { expect, test } from 'vitest';
import { distance, pathBounds } from '../../app/drafting/geometry';
import { knownOf } from '../../app/drafting/guide/known';
import { sceneOf } from '../../app/drafting/guide/scene';
import { along, edgeNamed, made, pieceNamed } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const cardOf = (wanted: string) => {
  const build = builds.find(({ name }) => name === wanted);
  if (!build) throw new RangeError(wanted);
  return buildCard(build);
};
const slit = (garment: string, name: string) => made(cardOf(name), garment, { choices: { opening: 'slit' } });

/** Sampled so finely, the nearest of an edge's own points is nearer than this, mm. */
const SAMPLED_MM = 0.2;

test.each([
  ['tee', 'back', 'tiny'],
  ['nightshirt', 'front', 'rabbit'],
  ['hooded-top', 'front', 'tiny'],
  ['simple-top', 'back', 'bear'],
] as const)(
  'a slit’s facing lies along the neckline it is tacked to, is cut level with it, and no wider than half the piece: %s',
  (garment, side, name) => {
    const draft = slit(garment, name);
    const [facing, ground] = [draft && pieceNamed(draft, 'slit-facing'), draft && pieceNamed(draft, side)];
    if (!draft || !facing || !ground) throw new RangeError('no slit');
    const top = edgeNamed(draft, 'slit-facing', 'top');
    const neck = [edgeNamed(draft, side, 'chin'), edgeNamed(draft, side, 'neckline')].flatMap(
      (edge) => edge?.path ?? [],
    );
    const places = along(neck, SAMPLED_MM);
    for (const { point } of along(top?.path ?? [], 3))
      expect(Math.min(...places.map((each) => distance(each.point, point)))).toBeLessThan(SAMPLED_MM);
    expect(top?.allowance).toBe(edgeNamed(draft, side, 'neckline')?.allowance);
    expect(pathBounds(facing.seamLine).right).toBeLessThanOrEqual(pathBounds(ground.seamLine).right / 2 + 0.01);
  },
);

test('in the picture a facing ends on the edge that it is laid along, where it does on the toy', () => {
  const draft = slit('tee', 'rabbit');
  const seam = draft?.seams.find(({ name }) => name === 'slit-top');
  if (!draft || !seam) throw new RangeError('no slit');
  const { meets } = sceneOf([seam], [], knownOf(draft));
  const [from, to] = [1, 2].map((number) => meets.filter((each) => each.number === number).map(({ at }) => at));
  const spans = [0, 1].map((side) => {
    const [one, two] = [from?.[side], to?.[side]];
    return one && two ? distance(one, two) : Number.NaN;
  });
  expect(spans[0]).toBeCloseTo(spans[1] ?? 0, 1);
});

test.each([
  ['raglan', 'front-raglan', 'back-raglan'],
  ['set-in', 'front-cap', 'back-cap'],
] as const)('however small, a sleeve has one notch in front and two behind: %s', (armhole, front, back) => {
  const draft = made(cardOf('tiny'), 'tee', { choices: { armhole } });
  const ticks = (edge: string) =>
    draft && pieceNamed(draft, 'sleeve')?.notches.flatMap((notch) => (notch.edge === edge ? notch.ticks : []));
  expect(draft?.order.choices.armhole).toBe(armhole);
  expect(new Set(ticks(front))).toEqual(new Set([1]));
  expect(ticks(back)).toContain(2);
});
