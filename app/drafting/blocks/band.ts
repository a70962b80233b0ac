import { hemLine } from '../curves/hem';
import { ROUND_STRAP_SHARE, STITCHED_DOWN_MM } from '../curves/shares';
import {
  ellipseQuarter,
  endTangent,
  hermite,
  line,
  norm,
  type Point,
  pathLength,
  point,
  splitPath,
  subtract,
  translatePath,
} from '../geometry';
import { block, type Fed, type Shape } from './block';

const SIZES = ['topHalf', 'hemHalf', 'bandHeight', 'strapAt', 'halterHalf', 'halterHeight'] as const;
/** `dip` of the top at the centre; `past` how far an open centre lies past the centre line; `strapWidth` where a strap is sewn on. */
const OPTIONAL = ['dip', 'past', 'strapWidth'] as const;
const EDGES = ['neck-end', 'neckline', 'armhole', 'side', 'hem', 'hem-end', 'centre'] as const;

type Band = Fed<(typeof SIZES)[number], (typeof OPTIONAL)[number]>;
type Drawn = Shape<(typeof EDGES)[number], 'strap'>;

/** How a strapless bodice ends above. */
export type BandTop = 'straight' | 'round' | 'halter';

/**
 * Half a bodice without shoulders; x right from the centre line, y down from the underarm. `straight`: a band whose top may
 * dip at the centre; `round`: half a circle, squeezed or stretched to its height, standing on the waist; `halter`: drawn
 * up to the neck. Sizes in mm: `topHalf` at the underarm, `hemHalf` at the waist, `bandHeight` between.
 */
export function band(top: BandTop) {
  return block({
    sizes: SIZES,
    optional: OPTIONAL,
    edges: EDGES,
    lines: ['strap'],
    draw: (sizes) => (top === 'round' ? round(sizes) : straight(sizes, top)),
  });
}

function straight(s: Band, top: BandTop): Drawn {
  const { topHalf, hemHalf, bandHeight, past } = s;
  const open = past !== null;
  const underarm = point(topHalf, 0);
  const side = [line(underarm, point(hemHalf, bandHeight))];
  const down = endTangent(side);
  const out = point(down.y, -down.x);
  const upper = top === 'halter' ? halter(s, underarm, out) : dipped(s, underarm, out);
  const high = upper.start.y;
  const x = past === null ? 0 : -past;
  return {
    edges: {
      ...(open ? { 'neck-end': [line(point(x, high), point(0, high))] } : {}),
      ...upper.edges,
      side,
      hem: hemLine(side, point(0, bandHeight)),
      ...(open ? { 'hem-end': [line(point(0, bandHeight), point(x, bandHeight))] } : {}),
      centre: [line(point(x, bandHeight), point(x, high))],
    },
    lines: upper.lines,
  };
}

/** A strap is stitched on no farther down than this share of the bodice. */
const MOST_DOWN = 0.4;

type Upper = Drawn & { readonly start: Point };

/** The place of a strap's end: a strap's width of the top, as far below it as a strap is stitched down. */
function dipped({ dip, bandHeight, strapWidth, strapAt }: Band, underarm: Point, out: Point): Upper {
  const start = point(0, dip ?? 0);
  const neckline = [hermite(start, point(1, 0), underarm, out, 1 / 3, 1 / 3)];
  if (strapWidth === null) return { start, edges: { neckline }, lines: {} };
  const [, from] = splitPath(neckline, pathLength(neckline) * strapAt);
  const [under] = splitPath(from, strapWidth);
  const down = Math.min(STITCHED_DOWN_MM, (bandHeight - (dip ?? 0)) * MOST_DOWN);
  return { start, edges: { neckline }, lines: { strap: translatePath(under, 0, down) } };
}

/** Handles of a halter's armhole, as shares of its chord, and the least of a half chest that it is hollowed by. */
const HALTER_HANDLE = 0.45;
const LEAST_HOLLOW = 0.1;

/** From the top of the centre along the narrow top, then down a hollow armhole, square to the side. */
function halter({ halterHalf, halterHeight, strapWidth, topHalf }: Band, underarm: Point, out: Point): Upper {
  const start = point(0, -halterHeight);
  const corner = point(halterHalf, -halterHeight);
  // However narrow the chest, the hollow stays clear of the strap.
  const hollow = Math.max(topHalf - halterHalf, topHalf * LEAST_HOLLOW) / norm(subtract(underarm, corner));
  const armhole = hermite(corner, point(0, 1), underarm, out, HALTER_HANDLE, Math.min(HALTER_HANDLE, hollow));
  const below = -halterHeight + STITCHED_DOWN_MM;
  return {
    start,
    edges: { neckline: [line(start, corner)], armhole: [armhole] },
    lines: strapWidth !== null ? { strap: [line(point(0, below), point(strapWidth, below))] } : {},
  };
}

function round({ hemHalf, bandHeight, strapWidth }: Band): Drawn {
  const top = point(0, 0);
  const foot = point(hemHalf, bandHeight);
  const below = bandHeight * ROUND_STRAP_SHARE;
  return {
    edges: {
      neckline: [ellipseQuarter(top, point(1, 0), foot, point(0, 1))],
      hem: [line(foot, point(0, bandHeight))],
      centre: [line(point(0, bandHeight), top)],
    },
    lines: strapWidth !== null ? { strap: [line(point(0, below), point(strapWidth, below))] } : {},
  };
}
