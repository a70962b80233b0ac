import type { Mm } from '../../body';
import { cubic, type Path, point } from '../geometry';

/** Half of a round body, from its fullest line to its top or to its foot: half an ellipsoid `full` mm round and `high` mm high. */
export type RoundHalf = { readonly full: Mm; readonly high: Mm };

/** Turned so far from the fullest line, radians, the body is cos(turn) as wide; its surface goes so far for each radian (ellipse: geometry). */
const speed = ({ full, high }: RoundHalf, turn: number): Mm =>
  Math.hypot((full / (2 * Math.PI)) * Math.sin(turn), high * Math.cos(turn));

/** Cubics that follow a half: enough that none is off by a hundredth of a millimetre. */
const STEPS = 24;

/** How far over the surface it is from the fullest line, mm; Simpson's rule, far within a thousandth here. */
export function roundAlong(half: RoundHalf, turn: number): Mm {
  return ways(half, turn)[STEPS] ?? 0;
}

/** The body's half width grows so much for each mm towards the fullest line. */
export function roundRise(half: RoundHalf, turn: number): number {
  return ((half.full / (2 * Math.PI)) * Math.sin(turn)) / speed(half, turn);
}

/** Where a girth is reached, for one that lies on the half; radians from the fullest line. */
export const turnAt = ({ full }: RoundHalf, girth: Mm): number => Math.acos(Math.min(girth / full, 1));

/** A height above or below the fullest line, as the same. */
export const turnAtHeight = ({ high }: RoundHalf, height: Mm): number => Math.asin(Math.min(height / high, 1));

/** The half that is `girth` round at `height` from its fullest line. */
export function roundThrough(full: Mm, girth: Mm, height: Mm): RoundHalf {
  const narrow = Math.min(Math.max(girth / full, NARROWEST), WIDEST);
  const radius = full / (2 * Math.PI);
  const high = height / Math.sqrt(1 - narrow * narrow);
  return { full, high: Math.min(Math.max(high, radius * FLATTEST), radius * TALLEST) };
}

/** Girths outside these shares of the fullest tell no shape, and no toy is flatter or taller for its half width. */
const NARROWEST = 0.2;
const WIDEST = 0.97;
const FLATTEST = 0.4;
const TALLEST = 3;

/** Added to the girth at the fullest line and at the other end: between them it changes as the square of the way. */
export type Eases = { readonly full: Mm; readonly end: Mm };

/**
 * One seam of one of `count` equal gores round a half, from the fullest line at 0, 0 up or down (`way` −1 or 1); x right from
 * the gore's middle: half of what all gores must be wide there, shared out evenly. Without ease on a ball it is the plain
 * cosine of a sphere's gores (geometry).
 */
export function roundSeam(half: RoundHalf, turn: number, eases: Eases, count: number, way: -1 | 1): Path {
  const along = ways(half, turn);
  const whole = along[STEPS] ?? 0;
  const at = (step: number) => {
    const t = (turn * step) / STEPS;
    const far = along[step] ?? 0;
    const more = (eases.end - eases.full) / whole ** 2;
    const girth = half.full * Math.cos(t) + eases.full + more * far ** 2;
    const grows = 2 * more * far - (half.full * Math.sin(t)) / speed(half, t);
    return { far, x: girth / (2 * count), grows: grows / (2 * count) };
  };
  return Array.from({ length: STEPS }, (_, step) => {
    const [from, to] = [at(step), at(step + 1)];
    const third = (to.far - from.far) / 3;
    return cubic(
      point(from.x, way * from.far),
      point(from.x + from.grows * third, way * (from.far + third)),
      point(to.x - to.grows * third, way * (to.far - third)),
      point(to.x, way * to.far),
    );
  });
}

/** Ways over the surface from the fullest line, at even turns. */
function ways(half: RoundHalf, turn: number): Mm[] {
  const step = turn / STEPS;
  const far = [0];
  for (let n = 0; n < STEPS; n++) {
    const [a, b, c] = [n * step, (n + 0.5) * step, (n + 1) * step].map((t) => speed(half, t)) as [
      number,
      number,
      number,
    ];
    far.push((far[n] ?? 0) + (step * (a + 4 * b + c)) / 6);
  }
  return far;
}
