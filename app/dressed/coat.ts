import { mirror, type Point, point } from '../body/point';
import { closed, type Part, type Stage } from '../measuring/figure';
import { bothHalves, cloth, corner, drawnSeam, stitches } from './cloth';
import type { Coat } from './clothes';

/** Cloth stands off the fur by this share of the body. */
const OFF = 1.04;
/** How high a collar is drawn, in the figure's units. */
const COLLAR = 7;

/** A coat on a four-legged toy, seen from an end: what lies over its trunk, and over its front legs. */
export type CoatParts = { readonly trunk: readonly Part[]; readonly legs: readonly Part[] };

/** `down`: mm in the figure's units. */
export function coatParts(coat: Coat, stage: Stage, view: 'front' | 'back', down: (mm: number) => number): CoatParts {
  const right = trunkSide(stage);
  const low = right.at(-1) ?? point(0, 0);
  const seam = coat.opens === (view === 'front' ? 'belly' : 'back');
  const shape = coat.flat ? overBack(right, view) : right;
  const hem = coat.flat ? [stitches(hemOf(shape))] : [];
  return {
    trunk: [
      cloth(bothHalves([point(0, coat.flat && view === 'front' ? 8 : 3), ...shape])),
      ...(view === 'back' && !coat.flat ? [closed('rump', 'fur', rump(low.y, right))] : []),
      ...(coat.flat && view === 'front' ? lappedTabs(right, down(coat.tab)) : []),
      ...hem,
      ...(seam ? [drawnSeam([point(0, 4), point(0, view === 'back' ? rumpTop(low.y) : low.y)])] : []),
      ...(coat.collar ? [collarOf(right[0] ?? point(1, 0))] : []),
    ],
    legs: coat.sleeve > 0 && view === 'front' ? sleeves(stage, down(coat.sleeve)) : [],
  };
}

/** The right half of the trunk from the crease of the neck to its lowest point, a little outside the fur. */
function trunkSide({ parts }: Stage): Point[] {
  const trunk = parts.find(({ name }) => name === 'trunk')?.points ?? [];
  const half = trunk.filter(({ x, y }) => x >= 0 && y > -5).map(({ x, y }) => point(x * OFF, y));
  const [first = point(0, 0), ...rest] = half;
  return [...corner(first), ...rest];
}

const lowest = (side: readonly Point[]): number => Math.max(...side.map(({ y }) => y));

/** A flat coat reaches down to its sides' middle. */
function overBack(right: readonly Point[], view: 'front' | 'back'): Point[] {
  const stop = (view === 'front' ? 0.5 : 0.7) * lowest(right);
  const above = right.filter(({ y }) => y < stop);
  const edge = above.at(-1) ?? point(0, 0);
  return [...above, ...corner(point(edge.x * OFF, stop)), point(edge.x * 0.5, stop + (view === 'front' ? 2 : 10))];
}

/** From behind, the toy's own round end stands out of the coat. */
const rumpTop = (low: number): number => 0.3 * low;
function rump(low: number, right: readonly Point[]): Point[] {
  const wide = Math.max(...right.map(({ x }) => x)) * 0.86;
  const [top, middle] = [rumpTop(low), 0.64 * low];
  const half = [point(0, top), point(0.7 * wide, top + 0.1 * low), point(wide, middle), point(0.62 * wide, 0.93 * low)];
  return bothHalves([...half, point(0, 0.97 * low)]);
}

function hemOf(right: readonly Point[]): Point[] {
  const low = right.slice(-2);
  return [...low.map(mirror), ...low.reverse()].map(({ x, y }) => point(x * 0.93, y - 4));
}

/** Two tabs that lap on the chest. */
function lappedTabs(right: readonly Point[], wide: number): Part[] {
  const at = 0.26 * lowest(right);
  const reach = (right[0]?.x ?? 20) * 1.1;
  const tab = (side: 1 | -1) =>
    cloth([
      ...corner(point(side * reach, at - 0.7 * wide)),
      point(-side * 0.3 * reach, at + 0.2 * wide),
      point(-side * 0.5 * reach, at + 0.6 * wide),
      point(-side * 0.3 * reach, at + wide),
      ...corner(point(side * reach, at + 0.4 * wide)),
    ]);
  return [tab(1), tab(-1)];
}

function collarOf(crease: Point): Part {
  const half = crease.x + 2;
  const edge = (y: number, sag: number) => [point(-half, y), point(0, y + sag), point(half, y)];
  return cloth([...edge(crease.y - COLLAR, 5), ...edge(crease.y + 2, 7).reverse()].flatMap(corner));
}

/** Sleeves down the front legs; those of a toy that sits point at who looks, and show their soles. */
function sleeves({ parts }: Stage, long: number): Part[] {
  if (parts.some(({ name }) => name === 'pad')) return [];
  return parts
    .filter(({ name }) => name === 'front-leg' || name === 'front-leg-left')
    .flatMap(({ points }) => {
      const [top, base] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
      const xs = points.map(({ x }) => x);
      const [near, far] = [Math.min(...xs) - 2, Math.max(...xs) + 2];
      const stop = Math.min(top + long, base - 2);
      const ring = [point(near, top), point(far, top), point(far, stop), point(near, stop)].flatMap(corner);
      return [cloth(ring), stitches([point(near + 1, stop - 4), point(far - 1, stop - 4)])];
    });
}
