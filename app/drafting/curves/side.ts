import type { Mm } from '../../body';
import { brent, cubic, type Path, type Point, pathLength, point } from '../geometry';

const SOLVED_MM = 1e-5;
export const sideSizes = ['sideLevel', 'armholeDepth', 'tummyHalf', 'hemHalf', 'fullest', 'sideGather'] as const;

/**
 * The side seam, from the underarm out past the tummy to the hem, bending one way only. Its length is what the side
 * level leaves below the armhole, plus what is gathered in: so front and back match whatever their widths.
 */
export function sideSeam(underarm: Point, s: Readonly<Record<(typeof sideSizes)[number], Mm>>): Path {
  const { sideLevel, armholeDepth, tummyHalf, hemHalf, fullest, sideGather } = s;
  const length = Math.max(sideLevel - armholeDepth, 1) + sideGather;
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
