import { lerp, type Point, point } from '../body/point';
import type { Part, Stage } from '../measuring/figure';
import { cloth, corner, drawnSeam, inside, otherHalf } from './cloth';
import type { Hat } from './clothes';

/** How far down a turned-up brim reaches, in figure units. */
const CUFF = 9;

/** A round hat on any head: from its brim over the crown, its seams meeting there. */
export function hatParts({ cuff, brim: out }: Hat, { places }: Stage): Part[] {
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
  return [
    cloth(dome),
    drawnSeam(seam),
    drawnSeam(otherHalf(seam)),
    ...(cuff ? [inside([...band, ...upper])] : []),
    ...(out > 0 ? [brimOf(side, low, out)] : []),
  ];
}

/** Half the head is about so much of its girth across. */
const ACROSS = Math.PI;
/** How far a brim falls, of what it stands out. */
const FALLS = 0.45;

/** A brim all round, seen from the side of its edge: `out` of the head's girth beyond it. */
function brimOf(side: Point, low: Point, out: number): Part {
  const wide = side.x * (1 + 2 * ACROSS * out);
  const edge = point(wide, side.y + FALLS * (wide - side.x));
  const right = [point(side.x, side.y - 3), ...corner(edge)];
  const below = point(0, Math.max(low.y, edge.y) + FALLS * (wide - side.x));
  return cloth([point(0, low.y - 3), ...right, below, ...otherHalf(right).reverse()]);
}
