import { type RoundHalf, roundAlong, roundSeam } from '../curves/round';
import {
  brent,
  end,
  endTangent,
  hermite,
  line,
  type Path,
  pathLength,
  point,
  reversePath,
  splitPath,
  transformPath,
  translatePath,
} from '../geometry';
import { block, type Fed } from './block';

const SOLVED_MM = 1e-4;
/** An end's ease is looked for within this share of what it is to measure. */
const MOST_EASE = 0.5;

const SIZES = [
  'goreCount',
  'roundFull',
  'roundUp',
  'roundDown',
  'neckTurn',
  'hemTurn',
  'neck',
  'tummy',
  'hem',
] as const;
type Gore = Fed<(typeof SIZES)[number]>;

/** Half a gore from neck to hem beside its fold; x right from it, y down from the neck. */
export const roundGore = block({
  sizes: SIZES,
  edges: ['neck', 'side', 'hem', 'centre'],
  draw: (sizes) => {
    const { neck, side, hem, long } = halfOf(sizes);
    return { edges: { neck, side, hem, centre: [line(point(0, long), point(0, 0))] }, lines: {} };
  },
});

/** A whole gore beside a wing, which comes through its right seam from `wingFrom` below the neck for `wingLong` mm. */
export const wingGore = block({
  sizes: SIZES,
  optional: ['wingFrom', 'wingLong'],
  edges: ['neck', 'seam', 'above', 'wing', 'below', 'hem', 'side'],
  draw: (sizes) => {
    const { neck, side, hem } = halfOf(sizes);
    const [above, rest] = splitPath(side, sizes.wingFrom ?? 0);
    const [wing, below] = splitPath(rest, sizes.wingLong ?? 0);
    const right = sizes.wingFrom === null || sizes.wingLong === null ? { seam: side } : { above, wing, below };
    return {
      edges: {
        neck: [...reversePath(mirrored(neck)), ...neck],
        ...right,
        hem: [...hem, ...reversePath(mirrored(hem))],
        side: reversePath(mirrored(side)),
      },
      lines: {},
    };
  },
});

/** Half a gore whose middle opens, at the line of the centre: it lies `backPast` mm beyond it, to lap over the other. */
export const openGore = block({
  sizes: [...SIZES, 'backPast'],
  edges: ['neck', 'side', 'hem', 'hem-end', 'centre', 'neck-end'],
  lines: ['centre-line'],
  draw: (sizes) => {
    const { neck, side, hem, long } = halfOf(sizes);
    const past = -sizes.backPast;
    return {
      edges: {
        neck,
        side,
        hem,
        'hem-end': [line(point(0, long), point(past, long))],
        centre: [line(point(past, long), point(past, 0))],
        'neck-end': [line(point(past, 0), point(0, 0))],
      },
      lines: { 'centre-line': [line(point(0, 0), point(0, long))] },
    };
  },
});

const mirrored = (path: Path) => transformPath(path, ({ x, y }) => point(-x, y));

/** A gore's right half. Its seam is as long as its middle, so that neck and hem lie level on a round body. */
function halfOf(sizes: Gore): { readonly neck: Path; readonly side: Path; readonly hem: Path; readonly long: number } {
  const { roundFull: full, roundUp, roundDown, neckTurn, hemTurn, neck, hem } = sizes;
  const [up, down] = [
    { full, high: roundUp },
    { full, high: roundDown },
  ];
  const above = endedAt(up, neckTurn, neck, sizes, -1);
  const below = endedAt(down, hemTurn, hem, sizes, 1);
  const high = roundAlong(up, neckTurn);
  const moved = (path: Path) => translatePath(path, 0, high);
  return {
    neck: moved(reversePath(above.end)),
    side: moved([...reversePath(above.seam), ...below.seam]),
    hem: moved(below.end),
    long: high + roundAlong(down, hemTurn),
  };
}

/** A half's seam and the edge it ends in, from the seam to the middle: all edges together are `round`. */
function endedAt(half: RoundHalf, turn: number, round: number, { goreCount, tummy }: Gore, way: -1 | 1) {
  const long = roundAlong(half, turn);
  const drawn = (ease: number) => {
    const eases = { full: tummy - half.full, end: ease };
    const [seam] = splitPath(roundSeam(half, turn, eases, goreCount, way), long);
    return { seam, end: ending(seam, point(0, way * long), way) };
  };
  const left = (ease: number) => 2 * goreCount * pathLength(drawn(ease).end) - round;
  const solved = brent(left, -MOST_EASE * round, MOST_EASE * round, { tolerance: SOLVED_MM });
  return drawn(solved.ok ? solved.x : round - half.full * Math.cos(turn));
}

/** From the seam's end, square to it, to the middle, square to the fold. */
function ending(seam: Path, middle: { readonly x: number; readonly y: number }, way: -1 | 1): Path {
  const on = endTangent(seam);
  return [hermite(end(seam), point(-way * on.y, way * on.x), middle, point(-1, 0), 1 / 3, 1 / 3)];
}
