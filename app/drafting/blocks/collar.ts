import { neckline } from '../curves/neckline';
import {
  add,
  at,
  type Cubic,
  type Curve,
  cubic,
  curvature,
  distance,
  dot,
  ellipseQuarter,
  end,
  endTangent,
  line,
  type Path,
  type Point,
  pathLength,
  point,
  pointAtLength,
  reversePath,
  right,
  rotate,
  scale,
  split,
  splitPath,
  start,
  startTangent,
  subtract,
  tangent,
  transformPath,
  unit,
} from '../geometry';
import { block, type Fed } from './block';

/** An end is rounded over this share of the width: a quarter circle takes off what would stick up (common practice, no source). */
const ROUNDED = 0.55;
/** Each curve of the neck is followed in so many pieces. */
const PIECES = 4;
/** How far to either side of the shoulder the line looks, as a share of the shorter of the two. */
const TRUED = 0.35;
/** A handle reaches no farther than this share of the way to where the curve's two directions meet: it would bulge. */
const LONGEST_HANDLE = 0.85;

/**
 * Half of a flat collar, from centre front to centre back, traced from the bodice with front and back put together at the
 * shoulder. There they overlap by `overlap` radians about the neck point, so that the outer edge is a little short and the
 * collar rolls over its seam (common practice, no source). x right from centre front, y down, `slope` in radians; the neck
 * edge is `collarNeck` long, the collar `collarWidth` wide, both its ends rounded.
 */
export const collar = block({
  sizes: ['neckHalfWidth', 'frontNeckDrop', 'backNeckDrop', 'slope', 'overlap', 'collarNeck', 'collarWidth'],
  edges: ['neck', 'round', 'end'],
  draw: (sizes) => {
    const neck = toLength(joinedNeck(sizes), sizes.collarNeck);
    const wide = sizes.collarWidth;
    const corner = wide * ROUNDED;
    const outer = reversePath(beside(neck, wide));
    const [, rest] = splitPath(outer, corner);
    const [along] = splitPath(rest, pathLength(rest) - corner);
    const out = right(endTangent(neck));
    const back = add(end(neck), scale(out, wide - corner));
    const front = add(start(neck), scale(right(startTangent(neck)), wide - corner));
    const home = scale(right(startTangent(neck)), -1);
    return {
      edges: {
        neck,
        round: [
          line(end(neck), back),
          ellipseQuarter(back, out, start(along), startTangent(along)),
          ...along,
          ellipseQuarter(end(along), endTangent(along), front, home),
        ],
        end: [line(front, start(neck))],
      },
      lines: {},
    };
  },
});

type Necks = Fed<'neckHalfWidth' | 'frontNeckDrop' | 'backNeckDrop' | 'slope' | 'overlap'>;

/** The half necks of front and back as one line, trued where they meet: it runs there as the line over the shoulder does. */
function joinedNeck({ neckHalfWidth, frontNeckDrop, backNeckDrop, slope, overlap }: Necks): Path {
  const corner = point(neckHalfWidth, 0);
  const along = point(Math.cos(slope), Math.sin(slope));
  const over = (p: Point): Point => {
    const arm = subtract(p, corner);
    const mirrored = subtract(scale(along, 2 * dot(arm, along)), arm);
    return add(corner, rotate(mirrored, overlap));
  };
  const front = neckline(neckHalfWidth, frontNeckDrop, slope);
  const back = transformPath(reversePath(neckline(neckHalfWidth, backNeckDrop, slope)), over);
  const around = Math.min(distance(start(front), corner), distance(corner, end(back))) * TRUED;
  const ahead = pointAtLength(back, around).point;
  const through = unit(subtract(ahead, pointAtLength(front, pathLength(front) - around).point));
  const before = front.map((curve) => turned(curve, 'end', through));
  const [arriving] = before.slice(-1);
  const bend = arriving === undefined ? 0 : Math.abs(curvature(arriving, 1));
  return [...before, ...back.map((curve) => eased(turned(curve, 'start', through), through, bend))];
}

/**
 * The curve leaving along `way` no tighter than the one before it arrives (`bend`, 1/mm): a shallow back neck put to the front
 * would turn in a corner behind the shoulder, and is trued there.
 */
function eased(curve: Curve, way: Point, bend: number): Curve {
  if (curve.kind === 'line') return curve;
  const { from, out, into, to } = curve;
  // A cubic leaves with 2/3 of how far its second handle's end stands off, over its first handle squared (geometry).
  const off = Math.abs(dot(subtract(into, from), right(way)));
  const alike = bend > 0 ? Math.sqrt((2 * off) / (3 * bend)) : 0;
  const beyond = right(subtract(to, into));
  const corner = dot(subtract(to, from), beyond) / dot(way, beyond);
  const handle = Math.max(Math.min(alike, corner * LONGEST_HANDLE), distance(from, out));
  return cubic(from, add(from, scale(way, handle)), into, to);
}

/** The curve leaving or arriving along another direction, its handle as long as before. */
function turned(curve: Curve, where: 'start' | 'end', way: Point): Curve {
  if (curve.kind === 'line') return curve;
  const { from, out, into, to } = curve;
  return where === 'end'
    ? cubic(from, out, subtract(to, scale(way, distance(into, to))), to)
    : cubic(from, add(from, scale(way, distance(from, out))), into, to);
}

function toLength(path: Path, length: number): Path {
  const share = length / pathLength(path);
  return transformPath(path, (p) => scale(p, share));
}

/** A path beside another, `away` mm on its right. */
function beside(path: Path, away: number): Path {
  return path.flatMap((curve) => piecesOf(curve).map((each) => offset(each, away)));
}

function piecesOf(curve: Curve): readonly Curve[] {
  const pieces: Curve[] = [];
  let rest = curve;
  for (let left = PIECES; left > 1; left -= 1) {
    const [first, second] = split(rest, 1 / left);
    pieces.push(first);
    rest = second;
  }
  return [...pieces, rest];
}

/** Short curves: their parallels have the same directions at the ends, and handles longer as the chords are. */
function offset(curve: Curve, away: number): Cubic {
  const [leaving, arriving] = [tangent(curve, 0), tangent(curve, 1)];
  const from = add(at(curve, 0), scale(right(leaving), away));
  const to = add(at(curve, 1), scale(right(arriving), away));
  const chord = distance(curve.from, curve.to);
  const [out, into] =
    curve.kind === 'line' ? [chord / 3, chord / 3] : [distance(curve.from, curve.out), distance(curve.into, curve.to)];
  const longer = distance(from, to) / chord;
  return cubic(from, add(from, scale(leaving, out * longer)), subtract(to, scale(arriving, into * longer)), to);
}
