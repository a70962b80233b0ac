import {
  ellipseQuarter,
  end,
  endTangent,
  hermite,
  line,
  type Path,
  type Point,
  pathLength,
  point,
  splitPath,
  translatePath,
} from '../geometry';
import type { Block, Fed, Shape } from './block';

const NAMES = [
  'topHalf',
  'hemHalf',
  'bandHeight',
  'dip',
  'past',
  'strapWidth',
  'strapAt',
  'halterHalf',
  'halterHeight',
];

/** How a strapless bodice ends above. */
export type BandTop = 'straight' | 'round' | 'halter';

/**
 * Half a bodice without shoulders; x right from the centre line, y down from the underarm. `straight`: a band whose top may
 * dip at the centre; `round`: half a circle, squeezed or stretched to its height, standing on the waist; `halter`: drawn
 * up to the neck. Fed in mm: `topHalf` at the underarm, `hemHalf` at the waist, `bandHeight` between; `past` how far an
 * open centre lies past the centre line.
 */
export function band(top: BandTop, centre: 'fold' | 'open'): Block {
  return { sizes: NAMES, draw: (sizes) => (top === 'round' ? round(sizes) : straight(sizes, top, centre === 'open')) };
}

function straight(s: Fed, top: BandTop, open: boolean): Shape {
  const { topHalf = 0, hemHalf = 0, bandHeight = 0, past = 0 } = s;
  const underarm = point(topHalf, 0);
  const side = [line(underarm, point(hemHalf, bandHeight))];
  const down = endTangent(side);
  const out = point(down.y, -down.x);
  const upper = top === 'halter' ? halter(s, underarm, out) : dipped(s, underarm, out);
  const high = upper.start.y;
  const hem = hermite(end(side), point(-down.y, down.x), point(0, bandHeight), point(-1, 0), 1 / 3, 1 / 3);
  const x = open ? -past : 0;
  return {
    edges: {
      ...(open ? { 'neck-end': [line(point(x, high), point(0, high))] } : {}),
      ...upper.edges,
      side,
      hem: [hem],
      ...(open ? { 'hem-end': [line(point(0, bandHeight), point(x, bandHeight))] } : {}),
      centre: [line(point(x, bandHeight), point(x, high))],
    },
    lines: upper.lines,
  };
}

type Upper = { readonly start: Point; readonly edges: Record<string, Path>; readonly lines: Record<string, Path> };

/** The place of a strap's end: a strap's width of the top, just below it. */
function dipped({ dip = 0, strapWidth = 0, strapAt = 0 }: Fed, underarm: Point, out: Point): Upper {
  const start = point(0, dip);
  const neckline = [hermite(start, point(1, 0), underarm, out, 1 / 3, 1 / 3)];
  const [, from] = splitPath(neckline, pathLength(neckline) * strapAt);
  const [under] = splitPath(from, strapWidth);
  return {
    start,
    edges: { neckline },
    lines: strapWidth > 0 ? { strap: translatePath(under, 0, BELOW_TOP_MM) } : {},
  };
}

/** A strap is stitched on this far below the top, mm: clear of the dip, within the facing's reach. */
const BELOW_TOP_MM = 4;

/** From the top of the centre along the narrow top, then down a hollow armhole, square to the side. */
function halter({ halterHalf = 0, halterHeight = 0, strapWidth = 0 }: Fed, underarm: Point, out: Point): Upper {
  const start = point(0, -halterHeight);
  const corner = point(halterHalf, -halterHeight);
  const armhole = hermite(corner, point(0, 1), underarm, out, 0.45, 0.45);
  const below = -halterHeight + BELOW_TOP_MM;
  return {
    start,
    edges: { neckline: [line(start, corner)], armhole: [armhole] },
    lines: strapWidth > 0 ? { strap: [line(point(0, below), point(strapWidth, below))] } : {},
  };
}

function round({ hemHalf = 0, bandHeight = 0, strapWidth = 0 }: Fed): Shape {
  const top = point(0, 0);
  const foot = point(hemHalf, bandHeight);
  const below = bandHeight * 0.25;
  return {
    edges: {
      neckline: [ellipseQuarter(top, point(1, 0), foot, point(0, 1))],
      hem: [line(foot, point(0, bandHeight))],
      centre: [line(point(0, bandHeight), top)],
    },
    lines: strapWidth > 0 ? { strap: [line(point(0, below), point(strapWidth, below))] } : {},
  };
}
