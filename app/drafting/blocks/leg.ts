import { type Corners, crotchCurves, legCorners, waistLine } from '../curves/crotch';
import {
  add,
  cubic,
  end,
  line,
  type Path,
  pathLength,
  point,
  pointAtLength,
  right,
  scale,
  splitPath,
  start,
  startTangent,
  unit,
} from '../geometry';
import { block, type Fed } from './block';

/** Where on a waist a bib and the straps behind are stitched on. */
export const bibPlace = ['bibHalf', 'bibBelow', 'strapWidth', 'strapFrom'] as const;
const legSizes = ['legHalfHip', 'legRise', 'legRaised', 'legFork', 'legHem', 'legInside'] as const;

/** Below a gusset something of the inseam is left to sew, whatever the sizes. */
const MOST_GUSSETED = 0.9;

/**
 * One leg of trousers in one piece, without an outer seam: front at the left, back at the right; x from the middle of the
 * panel, y down from the front waist. Sizes in mm: `legHalfHip` half the finished hip, straight down to the crotch line at
 * `legRise`; `legRaised` how far the back rises above the front; `legFork` both forks together; `legHem` round;
 * `legInside` from the crotch line down. The waist is square to both centres, each crotch curve and the hem to the inseams. With a gusset
 * the top `legGusset` of each inseam is sewn to its side. A tail comes out `tailAbove` below the waist, through `tailLong` of
 * the back seam; `legOpen` of it, from the waist, are an edge that opens. With `tailLap` all above the tail opens, and laps by so
 * much past the centre.
 */
export const leg = block({
  sizes: legSizes,
  optional: ['legGusset', 'legOpen', 'tailAbove', 'tailLong', 'tailLap', ...bibPlace],
  edges: [
    'waist',
    'opening',
    'back-above',
    'tail-closure',
    'tail-end',
    'tail',
    'back-crotch',
    'back-gusset',
    'back-inseam',
    'hem',
    'front-inseam',
    'front-gusset',
    'front-crotch',
  ],
  lines: ['bib-place', 'strap-place', 'centre-line'],
  draw: (sizes) => {
    const { front, back } = legCorners(sizes);
    const crotch = crotchCurves(sizes);
    const down = [line(back.fork, back.hem)];
    const up = [line(front.hem, front.fork)];
    const length = pathLength(down);
    const side = Math.min(sizes.legGusset ?? 0, MOST_GUSSETED * length);
    const [backGusset, backInseam] = splitPath(down, side);
    const [frontInseam, frontGusset] = splitPath(up, length - side);
    const gusseted = side > 0;
    const waist = waistLine(front.waist, back.waist);
    return {
      edges: {
        waist: lapped(waist, sizes.tailLap),
        ...withTail(crotch.back, sizes),
        ...(gusseted ? { 'back-gusset': backGusset } : {}),
        'back-inseam': backInseam,
        hem: hemLine(back, front),
        'front-inseam': frontInseam,
        ...(gusseted ? { 'front-gusset': frontGusset } : {}),
        'front-crotch': crotch.front,
      },
      lines: { ...bibLines(waist, crotch.front, sizes), ...tailLines(crotch.back, sizes) },
    };
  },
});

/** Below the waist by `bibBelow`, from the front's centre (`front` runs up it): half as wide as a bib; and, `strapFrom` the back's, as wide as a strap. */
export function bibLines(
  waist: Path,
  front: Path,
  { bibHalf, bibBelow, strapWidth, strapFrom }: Fed<never, (typeof bibPlace)[number]>,
) {
  if (bibHalf === null || bibBelow === null || strapWidth === null || strapFrom === null) return {};
  const from = pointAtLength(front, pathLength(front) - bibBelow).point;
  const below = (way: number) => {
    const { point: at, tangent } = pointAtLength(waist, pathLength(waist) - way);
    return add(at, scale(right(tangent), bibBelow));
  };
  return {
    'bib-place': [line(from, add(from, scale(startTangent(waist), bibHalf)))],
    'strap-place': [line(below(strapFrom + strapWidth), below(strapFrom))],
  };
}

type Tailed = Fed<never, 'tailAbove' | 'tailLong' | 'legOpen' | 'tailLap'>;

/** The back seam, left open for a tail where one is given; of the rest `legOpen`, from the waist, opens, or all of it laps. */
export function withTail(seam: Path, { tailAbove, tailLong, legOpen, tailLap }: Tailed) {
  const open = legOpen ?? 0;
  const [opening, closed] = splitPath(seam, open);
  const opened = open > 0 ? { opening } : {};
  if (tailAbove === null || tailLong === null) return { ...opened, 'back-crotch': closed };
  const [above, below] = splitPath(closed, tailAbove - open);
  const [tail, crotch] = splitPath(below, tailLong);
  return { ...opened, ...aboveTail(above, tailLap), tail, 'back-crotch': crotch };
}

/** Sewn; or, past the centre by a lap, an edge that closes, straight so that it folds back flat, and its end. An opening that reaches the tail leaves nothing. */
function aboveTail(above: Path, lap: number | null) {
  if (pathLength(above) < LEAST_ABOVE_MM) return {};
  if (lap === null) return { 'back-above': above };
  const out = point(lap, 0);
  const [from, to] = [add(start(above), out), add(end(above), out)];
  return { 'tail-closure': [line(from, to)], 'tail-end': [line(to, end(above))] };
}

/** Shorter, it is the hair that a rounded sum leaves. */
const LEAST_ABOVE_MM = 0.01;

/** The waist runs on square to the centre, over the lap. */
export function lapped(waist: Path, lap: number | null): Path {
  const to = end(waist);
  return lap === null ? waist : [...waist, line(to, point(to.x + lap, to.y))];
}

/** Where the centre lies under a lap. */
export function tailLines(seam: Path, { tailAbove, tailLap }: Tailed) {
  if (tailAbove === null || tailLap === null) return {};
  return { 'centre-line': splitPath(seam, tailAbove)[0] };
}

/** Round the leg, square to both lines that come down to it. */
export function hemLine(back: Pick<Corners, 'fork' | 'hem'>, front: Pick<Corners, 'fork' | 'hem'>): Path {
  const third = (back.hem.x - front.hem.x) / 3;
  const beside = ({ fork, hem }: Pick<Corners, 'fork' | 'hem'>, inward: number) =>
    add(hem, scale(unit(point(hem.y - fork.y, fork.x - hem.x)), inward * third));
  return [cubic(back.hem, beside(back, -1), beside(front, 1), front.hem)];
}
