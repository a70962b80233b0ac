import { lerp, type Point, point } from '../body/point';
import type { Part, Stage } from '../measuring/figure';
import { cloth, corner, drawnSeam, inside, otherHalf } from './cloth';
import type { Hat } from './clothes';

/** How far down a turned-up brim reaches, in figure units. */
const CUFF = 9;

/** A round hat on any head: from its brim over the crown, its seams meeting there. */
export function hatParts({ cuff, brim: out, strap }: Hat, { places }: Stage, view: 'front' | 'back'): Part[] {
  const { crown, brim, brimMiddle, chin } = places;
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
    ...(strap && chin && view === 'front' ? strapsTo(chin, side) : []),
    cloth(dome),
    drawnSeam(seam),
    drawnSeam(otherHalf(seam)),
    ...(cuff ? [inside([...band, ...upper])] : []),
    ...(out > 0 ? [brimOf(side, low, out)] : []),
  ];
}

/** How wide a strap is drawn, and how far it lies in from the hat's side on its way down, of that. */
const STRAP = 5;
const DOWN_AT = 0.9;

/** Down either side of the face to the chin. */
function strapsTo(chin: Point, side: Point): Part[] {
  const low = lerp(side, chin, 0.6);
  const outer = [side, point(DOWN_AT * side.x, low.y), point(0, chin.y + 1)];
  const inner = outer.map(({ x, y }) => point(Math.max(x - STRAP, 0), y - STRAP)).reverse();
  const right = [...outer, ...inner];
  return [cloth(right), cloth(otherHalf(right))];
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
