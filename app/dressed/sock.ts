import { moved, type Point, point, right, toward } from '../body/point';
import { type Part, station } from '../measuring/figure';
import { cloth, corner, drawnSeam, otherHalf, stitches } from './cloth';
import type { Sock } from './clothes';
import { OFF, type Wearer } from './wearer';

/** Where on a leg's axis a sock begins, low or high. */
const FROM = { low: 0.74, high: 0.4 } as const;
/** Its cloth stands off the foot by this share of it. */
const OVER = 1.05;

/** A sock on either foot: a tube round the end of the leg, and over the foot where it is seen. */
export function sockParts({ high, rib }: Sock, { form, legs: { axis }, stage }: Wearer): Part[] {
  const from = high ? FROM.high : FROM.low;
  const across = (t: number): readonly [Point, Point] => {
    const { at, toward: next } = station(axis, t);
    const aside = right(toward(at, next));
    const half = form.legHalf + (form.footHalf - form.legHalf) * t * t + OFF;
    return [moved(at, aside, -half), moved(at, aside, half)];
  };
  const [top, middle, end] = [across(from), across((from + 1) / 2), across(1)];
  const last = station(axis, 1);
  const round = moved(last.at, toward(last.at, last.toward), form.footHalf + OFF);
  const tube = [...corner(top[0]), middle[0], end[0], round, end[1], middle[1], ...corner(top[1])];
  const edge = [...across(from + (rib ? 0.1 : 0.06))];
  const line = rib ? drawnSeam : stitches;
  const feet = stage.parts
    .filter(({ name }) => name === 'foot' || name === 'foot-left')
    .map(({ points }) => grown(points));
  return [cloth(tube), line(edge), cloth(otherHalf(tube)), line(otherHalf(edge)), ...feet.map(cloth)];
}

/** The same outline a little larger about its middle. */
function grown(points: readonly Point[]): Point[] {
  const mean = (of: 'x' | 'y') => points.reduce((sum, each) => sum + each[of], 0) / Math.max(points.length, 1);
  const [x, y] = [mean('x'), mean('y')];
  return points.map((each) => point(x + (each.x - x) * OVER, y + (each.y - y) * OVER));
}
