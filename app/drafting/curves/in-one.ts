import type { Mm } from '../../body';
import {
  add,
  arc,
  at,
  distance,
  dot,
  heading,
  hermite,
  left,
  line,
  type Path,
  type Point,
  point,
  right,
  scale,
  subtract,
  unit,
} from '../geometry';

/** Half a front or back with its sleeve: what the sleeve is drawn from. Lengths mm, angles radians below level. */
export type InOneFrame = Readonly<
  Record<
    | 'slope'
    | 'shoulder'
    | 'neckHalfWidth'
    | 'armDrop'
    | 'armholeDepth'
    | 'chestHalf'
    /** How far the arm hangs, how long the sleeve is from the shoulder's end, half its cuff, and the underarm's radius. */
    | 'armTurn'
    | 'armReach'
    | 'cuffHalf'
    | 'armRadius',
    Mm
  >
>;

export type InOne = {
  /** Shoulder and the top of the sleeve in one line: from the neck it falls as the shoulder does, then points as the sleeve. */
  readonly over: Path;
  readonly cuff: Path;
  /** Up the sleeve and round into the side. */
  readonly underarm: Path;
  /** Round the sleeve where the underarm begins to turn, mm, and how far out the cuff lies from there along the arm: under 0, it cannot be drawn. */
  readonly bicep: Mm;
  readonly straight: Mm;
};

/** How far a sleeve bows at its cuff, of what lies between its corners. */
const THIRD = 1 / 3;

/**
 * A sleeve cut in one with its front or back; x right from the centre line, y down from the high shoulder point. The
 * underarm runs straight up from the cuff, then as an arc round a centre outside the piece, which ends at the underarm's level along the
 * side, that leaves there `down`.
 */
export function inOne(s: InOneFrame, down: Point): InOne {
  const neck = point(s.neckHalfWidth, 0);
  const armEnd = add(neck, scale(heading(s.slope), s.shoulder));
  const along = heading(s.armTurn);
  const wrist = add(armEnd, scale(along, s.armReach));
  const low = add(wrist, scale(right(along), s.cuffHalf));
  const underarm = point(s.chestHalf, s.armDrop + s.armholeDepth);
  const centre = add(underarm, scale(left(down), s.armRadius));
  const { touches, way } = tangentFrom(low, centre, s.armRadius);
  const from = angleOf(subtract(touches, centre));
  const turn = wrapped(from - angleOf(subtract(underarm, centre)));
  const over: Path = [hermite(neck, heading(s.slope), wrist, along, s.shoulder / distance(neck, wrist), THIRD)];
  return {
    over,
    cuff: [hermite(wrist, right(along), low, left(way), THIRD, THIRD)],
    underarm: [line(low, touches), ...arc(centre, s.armRadius, from, from - turn)],
    bicep: 2 * nearest(touches, over),
    straight: isOutside(low, centre, s.armRadius)
      ? dot(subtract(low, touches), along)
      : dot(subtract(low, centre), along) - s.armRadius,
  };
}

/** Where a line from outside touches a circle that lies on its left as seen, and which way it goes. */
function tangentFrom(from: Point, centre: Point, radius: Mm): { readonly touches: Point; readonly way: Point } {
  const to = subtract(centre, from);
  const square = Math.max(to.x ** 2 + to.y ** 2, radius ** 2 * CLEAR);
  const long = Math.sqrt(square - radius ** 2);
  const way = unit(subtract(scale(to, long), scale(left(to), radius)));
  return { touches: add(centre, scale(right(way), radius)), way };
}

/** Whether there is such a line. */
const isOutside = (p: Point, centre: Point, radius: Mm): boolean => distance(p, centre) ** 2 > radius ** 2 * CLEAR;

/** A line is drawn from no nearer a circle than this, its radius squared. */
const CLEAR = 1.0001;

const angleOf = ({ x, y }: Point): number => Math.atan2(y, x);
const wrapped = (angle: number): number => (angle + 4 * Math.PI) % (2 * Math.PI);
/** From a point to the nearest of a path's places. */
const nearest = (p: Point, path: Path): Mm =>
  Math.min(...path.flatMap((curve) => SAMPLES.map((share) => distance(at(curve, share), p))));

/** Often enough that none is missed by a hundredth of what is measured. */
const SAMPLES = Array.from({ length: 33 }, (_, n) => n / 32);
