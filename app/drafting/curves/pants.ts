import type { Mm } from '../../body';
import { type Cubic, cubic, line, type Path, type Point, point } from '../geometry';

/** Pants in one piece from waist to waist: what half their leg's edge is drawn from, mm. */
export type PantsFrame = Readonly<
  Record<
    /** Half the width before and behind, how long the sides are, the way between the legs from waist to waist, half as wide there, how far down that is. */
    | 'pantsFront'
    | 'pantsBack'
    | 'pantsSide'
    | 'pantsLong'
    | 'pantsCrotch'
    | 'pantsMiddle'
    /** How far the waist comes down in front, and rises behind, from side to centre. */
    | 'pantsRaised',
    Mm
  >
>;

/** The narrowest place is a strip this long, of the whole way. */
export const NARROW_SHARE = 0.06;
/** In front the edge is hollowed out for the leg; behind it lies fuller, over the seat: handles as shares of the way in, and of the way down. */
const HOLLOW = { in: 0.73, down: 0.76 } as const;
const FULL = { in: 0.76, down: 0.41 } as const;

/**
 * Round a leg: from the front's side in to the narrowest place and out to the back's side, square to both sides; x right from the
 * fold, y down from the middle of the front waist.
 */
export function legEdge(s: PantsFrame): Path {
  const { pantsFront, pantsBack, pantsLong, pantsCrotch, pantsMiddle } = s;
  const side = s.pantsSide - s.pantsRaised;
  const half = (pantsLong * NARROW_SHARE) / 2;
  const [above, below] = [point(pantsCrotch, pantsMiddle - half), point(pantsCrotch, pantsMiddle + half)];
  const [front, back] = [point(pantsFront, side), point(pantsBack, pantsLong - s.pantsSide - s.pantsRaised)];
  return [hollow(front, above, HOLLOW), line(above, below), reversed(hollow(back, below, FULL))];
}

/** From a side level in, then up or down to the narrowest place; its handles never pass either. */
function hollow(
  side: Point,
  narrow: Point,
  { in: inward, down }: { readonly in: number; readonly down: number },
): Cubic {
  const [across, along] = [side.x - narrow.x, narrow.y - side.y];
  return cubic(side, point(side.x - inward * across, side.y), point(narrow.x, narrow.y - down * along), narrow);
}

const reversed = ({ from, out, into, to }: Cubic): Cubic => cubic(to, into, out, from);
