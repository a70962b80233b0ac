import { expect, test } from 'vitest';
import type { Card } from '../../app/body';
import { type Draft, draft, fullOrder, type Outcome } from '../../app/drafting/draft';
import { bodyFrom } from '../../app/measuring';
import {
  type TriedPoint,
  type Turn,
  triedPoints,
  turnsFor,
  type Wrong,
  wrongsAt,
} from '../../app/screens/shared/trying/points';
import { type Corrections, propose, withoutLead } from '../../app/screens/shared/trying/propose';
import { brokenIn } from '../holds';
import { buildCard, builds } from '../toys/builds';

const QUARTER_INCH = 6.35;

function maker(card: Card, garment: string) {
  const full = fullOrder({ garment }, card.taken);
  if (!full.ok) throw new Error(full.fault.where);
  const body = bodyFrom(card);
  return (corrections: Corrections): Outcome =>
    draft({ ...body, corrections }, full.order, full.garment, card.toy.name);
}

function pointOf(id: string): TriedPoint {
  const point = triedPoints.find((each) => each.id === id);
  if (!point) throw new Error(id);
  return point;
}

async function told(build: number, garment: string, id: string, wrong: Wrong, corrections: Corrections = {}) {
  const one = builds[build];
  if (!one) throw new Error('no such build');
  const make = maker(buildCard(one), garment);
  const before = make(corrections);
  if (!before.ok) throw new Error('refused');
  const point = pointOf(id);
  const found = await propose(before.draft, corrections, { point, wrong, amount: QUARTER_INCH }, async (more) =>
    make(more),
  );
  return { before: before.draft, found, point, make };
}

/** The same toy's garment, given by what was learnt: its own drafts hold, and the place has changed by what was said. */
test.each([
  [1, 'tee', 'under-arm', 'tight', QUARTER_INCH],
  [1, 'hooded-top', 'under-arm', 'loose', -QUARTER_INCH],
  [2, 'tee', 'hem', 'short', QUARTER_INCH],
  [1, 'hooded-top', 'wrist', 'long', -QUARTER_INCH],
  [1, 'hooded-top', 'hood', 'tight', QUARTER_INCH],
  [1, 'tee', 'neck', 'tight', QUARTER_INCH],
  [0, 'cape', 'hem', 'long', -QUARTER_INCH],
  [0, 'skirt', 'waist', 'tight', QUARTER_INCH],
  [0, 'trousers', 'seat', 'tight', QUARTER_INCH],
  [1, 'trousers', 'seat', 'short', QUARTER_INCH],
  [1, 'trousers', 'leg-hem', 'loose', -QUARTER_INCH],
  [2, 'trousers', 'leg-hem', 'short', QUARTER_INCH],
  [0, 'trousers', 'waist', 'tight', QUARTER_INCH],
  [2, 'hat', 'brim', 'tight', QUARTER_INCH],
  [1, 'hat', 'brim', 'short', QUARTER_INCH],
] as const)(
  'build %i, %s, %s %s: changes by what was said, and seams still match',
  async (build, garment, id, wrong, by) => {
    const { before, found, point } = await told(build, garment, id, wrong);
    if (!found) throw new Error('nothing is proposed');
    const turn = turnsFor(point, wrong).find(({ lead }) => lead === found.lead);
    expect(change(turn, before, found.draft)).toBeCloseTo(by, 0);
    expect(brokenIn(found.draft)).toEqual([]);
  },
);

const change = (turn: Turn | undefined, before: Draft, after: Draft) =>
  (turn?.measured(after) ?? 0) - (turn?.measured(before) ?? 0);

test('a tight armhole takes its sleeve with it', async () => {
  const { before, found } = await told(1, 'tee', 'under-arm', 'tight');
  const length = (draft: Draft, piece: string, edges: readonly string[]) =>
    draft.pieces
      .filter(({ name }) => name === piece)
      .flatMap((each) => each.edges.filter(({ name }) => edges.includes(name)))
      .reduce((sum, edge) => sum + edge.length, 0);
  if (!found) throw new Error('nothing is proposed');
  const caps = [before, found.draft].map((draft) => length(draft, 'sleeve', ['front-cap', 'back-cap']));
  expect((caps[1] ?? 0) - (caps[0] ?? 0)).toBeGreaterThan(QUARTER_INCH / 2);
});

test.each([
  [0, 'chest', 'from'],
  [2, 'chest', 'from'],
  [1, 'hem', 'to'],
] as const)(
  'build %i: a tight %s is wider on the paper, half of it in the half front and back',
  async (build, id, end) => {
    const { before, found } = await told(build, 'tee', id, 'tight');
    if (!found) throw new Error('nothing is proposed');
    const width = (draft: Draft) =>
      draft.pieces
        .filter(({ name }) => name === 'front' || name === 'back')
        .map(({ edges, lines }) => {
          const path = edges.find(({ name }) => name === 'side')?.path;
          const curve = end === 'from' ? path?.[0] : path?.at(-1);
          // Level with the underarm darts take in what they are wide.
          const widest = (line: string) => lines.find(({ name }) => name === line)?.path[0]?.to.x ?? 0;
          const darts = ['', 'outer-'].map((dart) => widest(`${dart}dart-far`) - widest(`${dart}dart-near`));
          return (curve?.[end].x ?? Number.NaN) - (end === 'from' ? darts.reduce((sum, each) => sum + each) : 0);
        })
        .reduce((sum, x) => sum + x, 0);
    expect(found.by).toBeGreaterThan(QUARTER_INCH - 0.1);
    expect(width(found.draft) - width(before)).toBeCloseTo(found.by / 2, 0);
  },
);

test('where a dart falls away, a tight chest grows by more than was said: it is told by how much, and seams match', async () => {
  const { before, found, point } = await told(0, 'tee', 'chest', 'tight');
  if (!found) throw new Error('nothing is proposed');
  const turn = turnsFor(point, 'tight').find(({ lead }) => lead === found.lead);
  expect(found.by).toBeGreaterThan(QUARTER_INCH - 0.1);
  expect(found.by).toBeLessThan(3 * QUARTER_INCH);
  expect(change(turn, before, found.draft)).toBeCloseTo(found.by, 0);
  expect(brokenIn(found.draft)).toEqual([]);
});

test('the next garment of the toy starts from it; taken back, all is as before', async () => {
  const { found, make } = await told(1, 'hooded-top', 'under-arm', 'tight');
  if (!found) throw new Error('nothing is proposed');
  const tee = maker(buildCard(builds[1] ?? raise()), 'tee');
  const [plain, learnt] = [tee({}), tee(found.corrections)];
  if (!plain.ok || !learnt.ok) throw new Error('refused');
  expect(change(turnsFor(pointOf('under-arm'), 'tight')[0], plain.draft, learnt.draft)).toBeCloseTo(QUARTER_INCH, 0);
  const turns = triedPoints.flatMap(({ width, length }) => [...width, ...length]);
  const back = withoutLead(found.corrections, found.lead, turns);
  expect(back).toEqual({});
  expect(make(back)).toEqual(make({}));
});

test('the same again says that a number may be wrong', async () => {
  const first = await told(1, 'tee', 'under-arm', 'tight');
  expect(first.found?.again).toBe(false);
  const second = await told(1, 'tee', 'under-arm', 'tight', first.found?.corrections);
  expect(second.found?.again).toBe(true);
});

/** What a side must have at least, mm: its hem and a little more. */
const LEAST_SIDE_MM = 12;

test.each(['tee', 'tank'])(
  'an armhole of a %s let out far, on the smallest toy too, leaves a side below it, and that is said',
  (garment) => {
    for (const build of builds) {
      const made = maker(buildCard(build), garment)({ armholeDepth: 30 });
      if (!made.ok) throw new Error('refused');
      const edges = made.draft.pieces.flatMap(({ name, edges }) => (['front', 'back'].includes(name) ? edges : []));
      const sides = edges.flatMap(({ name, length }) => (name === 'side' ? [length] : []));
      expect(sides.length).toBeGreaterThan(0);
      expect(Math.min(...sides)).toBeGreaterThan(LEAST_SIDE_MM);
    }
    const tiny = builds.find(({ name }) => name === 'tiny') ?? raise();
    const let30 = maker(buildCard(tiny), garment)({ armholeDepth: 30 });
    expect(let30.ok && let30.draft.adjustments.some(({ code }) => code === 'side-kept')).toBe(true);
  },
);

test('only what the garment has is asked', () => {
  const make = maker(buildCard(builds[0] ?? raise()), 'skirt')({});
  if (!make.ok) throw new Error('refused');
  expect(triedPoints.filter((point) => wrongsAt(point, make.draft).length > 0).map(({ id }) => id)).toEqual([
    'waist',
    'hem',
  ]);
});

function raise(): never {
  throw new Error('no such build');
}
