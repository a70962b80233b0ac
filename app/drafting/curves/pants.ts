import type { Mm } from '../../body';
import { hermite, line, type Path, point } from '../geometry';

/** Pants in one piece from waist to waist: what half their leg's edge is drawn from, mm. */
export type PantsFrame = Readonly<
  Record<
    /** Half the width before and behind, how long the sides are, the way between the legs from waist to waist, half as wide there. */
    'pantsFront' | 'pantsBack' | 'pantsSide' | 'pantsLong' | 'pantsCrotch' | 'pantsMiddle',
    Mm
  >
>;

/** The narrowest place is a strip this long, of the whole way. */
const NARROW_SHARE = 0.06;
/** In front the edge is hollowed out for the leg; behind it lies fuller, over the seat. */
const HOLLOW = [0.55, 0.5] as const;
const FULL = [0.36, 0.36] as const;

/**
 * Round a leg: from the front's side in to the narrowest place and out to the back's side, square to both sides; x right from the
 * fold, y down from the front waist.
 */
export function legEdge(s: PantsFrame): Path {
  const { pantsFront, pantsBack, pantsSide, pantsLong, pantsCrotch, pantsMiddle } = s;
  const half = (pantsLong * NARROW_SHARE) / 2;
  const [above, below] = [point(pantsCrotch, pantsMiddle - half), point(pantsCrotch, pantsMiddle + half)];
  const [inward, down, outward] = [point(-1, 0), point(0, 1), point(1, 0)];
  return [
    hermite(point(pantsFront, pantsSide), inward, above, down, ...HOLLOW),
    line(above, below),
    hermite(below, down, point(pantsBack, pantsLong - pantsSide), outward, ...FULL),
  ];
}
