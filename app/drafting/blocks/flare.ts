import { arc, line, type Path, point } from '../geometry';
import { block, type Fed } from './block';

/** Flares under this angle, radians, are drawn straight: their arcs would have radii of many metres. */
const STRAIGHT = 1e-4;

/**
 * A strip as wide above as `flareTop` and below as `flareBottom`, `flareHeight` deep: a rectangle, or a sector of a ring
 * where the two differ (arc = radius × angle: geometry). x right from its centre line, y down from the middle of its top;
 * square at every corner. `flareOpen` mm of the centre, from the top, are an edge of their own, or all of it. Skirts, bands, capes,
 * collars and bibs are all cut so.
 */
export const flare = block({
  sizes: ['flareTop', 'flareBottom', 'flareHeight'],
  optional: ['flareOpen'],
  edges: ['top', 'side', 'bottom', 'centre', 'opening'],
  draw: (sizes) => {
    const { flareHeight: height, flareOpen } = sizes;
    const { top, side, bottom } = ringSector(sizes);
    const open = Math.min(flareOpen ?? 0, height);
    const centre = open < height ? { centre: [line(point(0, height), point(0, open))] } : {};
    const opening = open > 0 ? { opening: [line(point(0, open), point(0, 0))] } : {};
    return { edges: { top, side, bottom, ...centre, ...opening }, lines: {} };
  },
});

/** The three drawn lines of a flare: above, beside and below. */
type Sector = { readonly top: Path; readonly side: Path; readonly bottom: Path };

export function ringSector({
  flareTop: wide,
  flareBottom: low,
  flareHeight: height,
}: Fed<'flareTop' | 'flareBottom' | 'flareHeight'>): Sector {
  const angle = (low - wide) / height;
  if (Math.abs(angle) < STRAIGHT) {
    return {
      top: [line(point(0, 0), point(wide, 0))],
      side: [line(point(wide, 0), point(wide, height))],
      bottom: [line(point(wide, height), point(0, height))],
    };
  }
  const down = Math.sign(angle);
  const radius = wide / Math.abs(angle);
  const centre = point(0, -down * radius);
  const from = (down * Math.PI) / 2;
  const to = from - angle;
  const foot = radius + down * height;
  const top = arc(centre, radius, from, to);
  const bottom = arc(centre, foot, to, from);
  const [corner, hemCorner] = [top[top.length - 1]?.to ?? point(0, 0), bottom[0]?.from ?? point(0, 0)];
  return { top, side: [line(corner, hemCorner)], bottom };
}
