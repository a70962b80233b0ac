import type { Draft } from '../../app/drafting/draft-types';
import { areaOf, bondsOf, elastics, fallOf } from './bonds';
import { type Air, type Bond, type Cloth, clothOf, step } from './cloth';
import type { Figure } from './figure';
import { type Panel, type Panels, panelsOf, type Sewn } from './panels';
import { placed } from './place';
import { at } from './space';

/** A garment on a body: its panels, its points' places (three numbers a point of a panel), how long it took to lie still. */
export type Worn = {
  readonly figure: Figure;
  readonly panels: Panels;
  readonly cloth: Cloth;
  /** The point of the cloth for each point of the panels: both halves share those on a fold. */
  readonly of: Int32Array;
  readonly edge: number;
  readonly steps: number;
  readonly still: number;
};

/** About so many points a garment. */
const POINTS = 1500;
/** A step moves less than this on average, mm: it lies still. */
const STILL_MM = 0.002;
/** Of the thinnest part so much is drawn in while seams close. */
const DRAWN_IN = 0.8;
const STEPS = { sewing: 250, growing: 300, settling: 1800 };

export function worn(draft: Draft, figure: Figure, thickness: number, fine = 1): Worn {
  const area = draft.pieces.reduce((sum, each) => sum + each.copies * (each.onFold ? 2 : 1) * boxed(each), 0);
  const edge = Math.max(1.5, Math.sqrt((0.6 * area) / (0.87 * POINTS))) / fine;
  const panels = panelsOf(draft, edge);
  const { of, places, count } = merged(panels, placed(panels, figure));
  const gathered = new Set(
    draft.seams
      .flatMap(({ join, second }) => (join === 'gathered' || join === 'pleated' ? second : []))
      .map(({ piece, edge: name }) => `${piece}.${name}`),
  );
  const full = ({ half, edges }: Panel) =>
    new Set(
      [...edges].flatMap(([name, points]) =>
        gathered.has(`${half.piece.name}.${name}`) ? points.map(({ point }) => point) : [],
      ),
    );
  const masses = new Float64Array(count);
  const bonds: Bond[] = [];
  for (const panel of panels.panels) {
    const here = (point: number) => at(of, panel.first + point);
    for (const triangle of panel.triangles) {
      const share = areaOf(panel.points, triangle) / 3;
      for (const point of triangle) masses[here(point)] = at(masses, here(point)) + share;
    }
    bonds.push(...bondsOf(panel, here, edge, full(panel)));
  }
  bonds.push(...elastics(draft, panels.panels, (panel, point) => at(of, panel.first + point), edge));
  const light = masses.map((mass) => 1 / Math.max(mass, 1e-3));
  for (const { one, two } of panels.sewn) if (at(of, one) !== at(of, two)) bonds.push(stitch(at(of, one), at(of, two)));
  const cloth = clothOf(places, light, bonds);
  const shrunk = drawnIn(figure);
  const air: Air = {
    fall: 0,
    falls: figure.falls === 'y' ? 1 : 2,
    damped: 0.1,
    shrunk,
    half: thickness / 2,
    grip: 0,
    gentle: edge / 6,
  };
  for (let n = 0; n < STEPS.sewing; n++) step(cloth, figure.solid, air);
  for (let n = 1; n <= STEPS.growing; n++)
    step(cloth, figure.solid, { ...air, shrunk: shrunk * (1 - n / STEPS.growing) });
  const settles = { ...air, shrunk: 0, fall: fallOf(edge), damped: 0.02, grip: 0.3, gentle: Number.POSITIVE_INFINITY };
  let [steps, still] = [0, Number.POSITIVE_INFINITY];
  while (steps < STEPS.settling && (still > STILL_MM || steps < 500)) {
    step(cloth, figure.solid, settles);
    steps += 1;
    if (steps % 50 === 0) still = cloth.moves.reduce((sum, each) => sum + Math.abs(each), 0) / count;
  }
  return { figure, panels, cloth, of, edge, steps, still };
}

const boxed = ({ edges }: Draft['pieces'][number]) => {
  const [xs, ys] = (['x', 'y'] as const).map((axis) => edges.flatMap(({ path }) => path.map(({ from }) => from[axis])));
  const span = (list: readonly number[] = []) => Math.max(...list) - Math.min(...list);
  return span(xs) * span(ys);
};

/** Drawn in so far that all of it is thin, and something of arms and legs is left: what is sewn round them stays there. */
function drawnIn({ section, lines, arms, legs }: Figure): number {
  const trunk = [lines.underarm, lines.waist].map((down) => Math.min(section(down).before, section(down).behind));
  const limbs = [...arms, ...legs].map(({ thick, girth, thin }) => Math.min(thick, girth, thin));
  return DRAWN_IN * Math.min(...trunk, ...limbs);
}

const stitch = (one: number, two: number): Bond => ({
  of: [one, two],
  by: [1, -1],
  rest: 0,
  pull: 0,
  push: 0,
  gentle: true,
});

function merged({ folds, count }: Pick<Panels, 'folds' | 'count'>, all: Float64Array) {
  const onto = new Map<number, number>(folds.map(({ one, two }: Sewn) => [two, one]));
  const of = new Int32Array(count);
  const kept: number[] = [];
  for (let point = 0; point < count; point++) {
    if (onto.has(point)) continue;
    of[point] = kept.length;
    kept.push(point);
  }
  for (const [point, to] of onto) of[point] = at(of, to);
  const places = Float64Array.from(
    kept.flatMap((point) => [at(all, 3 * point), at(all, 3 * point + 1), at(all, 3 * point + 2)]),
  );
  return { of, places, count: kept.length };
}
