import { add, bearing, distance, type Point, scale, subtract } from '../../body/point';

/** Handles as a share of the chord: 0.35 makes eight points on a circle a circle, to the eye. */
const HANDLE = 0.35;
const STEPS = 8;

type Bend = { readonly from: Point; readonly out: Point; readonly into: Point; readonly to: Point };

/** SVG path data of the smooth curve through `points`, round again to the first when `closed`. */
export function smoothPath(points: readonly Point[], closed: boolean): string {
  const [first, ...rest] = points;
  if (!first) return '';
  if (rest.length === 0) return `M${pair(first)}`;
  const bends = bendsOf(points, closed).map((bend) => `C${pair(bend.out)} ${pair(bend.into)} ${pair(bend.to)}`);
  return `M${pair(first)}${bends.join('')}${closed ? 'Z' : ''}`;
}

/** The same curve as points close enough together to reason about. A closed curve does not repeat its first point. */
export function smoothPoints(points: readonly Point[], closed: boolean): Point[] {
  const [first] = points;
  if (!first || points.length === 1) return [...points];
  const along = bendsOf(points, closed).flatMap((bend) =>
    Array.from({ length: STEPS }, (_, step) => at(bend, (step + 1) / STEPS)),
  );
  return closed ? along : [first, ...along];
}

/** Straight lines through `points`. */
export function straightPath(points: readonly Point[], closed: boolean): string {
  return points.length === 0 ? '' : `M${points.map(pair).join('L')}${closed ? 'Z' : ''}`;
}

/** Directions at each point follow its neighbours; handles follow the chord, so uneven spacing never overshoots. */
function bendsOf(points: readonly Point[], closed: boolean): Bend[] {
  const last = points.length - 1;
  const pick = (index: number): Point => {
    const wanted = closed ? (index + points.length) % points.length : Math.min(Math.max(index, 0), last);
    return points[wanted] ?? { x: 0, y: 0 };
  };
  const direction = (index: number) => bearing(subtract(pick(index + 1), pick(index - 1)));
  return Array.from({ length: closed ? points.length : last }, (_, index) => {
    const [from, to] = [pick(index), pick(index + 1)];
    const reach = HANDLE * distance(from, to);
    const out = add(from, scale(direction(index), reach));
    return { from, out, into: add(to, scale(direction(index + 1), -reach)), to };
  });
}

function at({ from, out, into, to }: Bend, t: number): Point {
  const s = 1 - t;
  const [a, b, c, d] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return {
    x: a * from.x + b * out.x + c * into.x + d * to.x,
    y: a * from.y + b * out.y + c * into.y + d * to.y,
  };
}

const pair = ({ x, y }: Point) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;
