import { lerp, point } from '../body/point';
import type { Part, Stage } from '../measuring/figure';
import { cloth, corner, drawnSeam, inside, otherHalf } from './cloth';
import type { Hat } from './clothes';

/** How far down a turned-up brim reaches, in figure units. */
const CUFF = 9;

/** A round hat on any head: from its brim over the crown, its seams meeting there. */
export function hatParts({ cuff }: Hat, { places }: Stage): Part[] {
  const { crown, brim, brimMiddle } = places;
  if (!crown || !brim || !brimMiddle) return [];
  const side = point(1.05 * brim.x, brim.y);
  const high = side.y - crown.y;
  const right = [
    point(0.62 * side.x, crown.y + 0.05 * high),
    point(0.96 * side.x, crown.y + 0.48 * high),
    ...corner(side),
  ];
  const top = point(0, crown.y - 5);
  const low = point(0, brimMiddle.y);
  const dome = [top, ...right, low, ...otherHalf(right).reverse()];
  const seam = [
    point(0, top.y),
    point(0.42 * side.x, crown.y + 0.45 * high),
    point(0.5 * side.x, lerp(low, side, 0.5).y),
  ];
  const band = [...corner(side), low, ...corner(point(-side.x, side.y))];
  const upper = band.map(({ x, y }) => point(0.99 * x, y - CUFF)).reverse();
  return [cloth(dome), drawnSeam(seam), drawnSeam(otherHalf(seam)), ...(cuff ? [inside([...band, ...upper])] : [])];
}
