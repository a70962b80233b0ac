import type { Mm } from '../../body';
import { brent, cubic, end, type Path, type Point, pathLength, point } from '../geometry';

const SOLVED_MM = 1e-5;
/** A raglan body's underarm lies this much below an armhole's, and its side is as much shorter (common practice, no source). */
export const RAGLAN_DEEPER_MM: Mm = 6;
export const sideSizes = ['sideLevel', 'armholeDepth', 'tummyHalf', 'hemHalf', 'fullest', 'sideGather'] as const;

type Side = Readonly<Record<(typeof sideSizes)[number], Mm>>;

/** A side that ends plumb leaves with this share of how far it goes out. */
const LEAVES = 0.5;

/** From the underarm out to the hem, which it meets upright: a straight hem is square to it. */
function plumbSide(underarm: Point, hemHalf: Mm, length: Mm): Path {
  const across = hemHalf - underarm.x;
  const draw = (drop: number): Path => [
    cubic(
      underarm,
      point(underarm.x + across * LEAVES, underarm.y + drop / 3),
      point(hemHalf, underarm.y + (2 * drop) / 3),
      point(hemHalf, underarm.y + drop),
    ),
  ];
  const solved = brent((drop) => pathLength(draw(drop)) - length, length * 0.02, length, { tolerance: SOLVED_MM });
  return draw(solved.ok ? solved.x : length);
}

/** How far down a side goes that ends plumb, `across` out and `length` long, mm. */
export const plumbDrop = (across: Mm, length: Mm): Mm => end(plumbSide(point(0, 0), across, length)).y;

/**
 * The side seam, from the underarm out past the tummy to the hem, bending one way only. Its length is what the side
 * level leaves below the armhole, plus what is gathered in: so front and back match whatever their widths.
 */
export function sideSeam(underarm: Point, s: Side, plumb = false): Path {
  const { sideLevel, armholeDepth, tummyHalf, hemHalf, fullest, sideGather } = s;
  const length = Math.max(sideLevel - armholeDepth, 1) + sideGather;
  if (plumb) return plumbSide(underarm, hemHalf, length);
  const across = hemHalf - underarm.x;
  // A cubic whose inner points stand out by k bulges by k times 3u(1 − u) at u of its way (geometry).
  const out = Math.max(tummyHalf - (underarm.x + fullest * across), 0) / (3 * fullest * (1 - fullest));
  const draw = (drop: number): Path => [
    cubic(
      underarm,
      point(underarm.x + across / 3 + out, underarm.y + drop / 3),
      point(underarm.x + (2 * across) / 3 + out, underarm.y + (2 * drop) / 3),
      point(hemHalf, underarm.y + drop),
    ),
  ];
  const solved = brent((drop) => pathLength(draw(drop)) - length, length * 0.02, length, { tolerance: SOLVED_MM });
  return draw(solved.ok ? solved.x : length);
}
