import { type Corners, crotchCurves, legCorners, waistLine } from '../curves/crotch';
import { add, cubic, line, type Path, pathLength, point, scale, splitPath, unit } from '../geometry';
import { block, type Fed } from './block';

const legSizes = ['legHalfHip', 'legRise', 'legRaised', 'legFork', 'legHem', 'legInside'] as const;

/** Below a gusset something of the inseam is left to sew, whatever the sizes. */
const MOST_GUSSETED = 0.9;

/**
 * One leg of trousers in one piece, without an outer seam: front at the left, back at the right; x from the middle of the
 * panel, y down from the front waist. Sizes in mm: `legHalfHip` half the finished hip, straight down to the crotch line at
 * `legRise`; `legRaised` how far the back rises above the front; `legFork` both forks together; `legHem` round;
 * `legInside` from the crotch line down. The waist is square to both centres, each crotch curve and the hem to the inseams. With a gusset
 * the top `legGusset` of each inseam is sewn to its side. A tail comes out `tailAbove` below the waist, through `tailLong` of
 * the back seam.
 */
export const leg = block({
  sizes: legSizes,
  optional: ['legGusset', 'tailAbove', 'tailLong'],
  edges: [
    'waist',
    'back-above',
    'tail',
    'back-crotch',
    'back-gusset',
    'back-inseam',
    'hem',
    'front-inseam',
    'front-gusset',
    'front-crotch',
  ],
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
    return {
      edges: {
        waist: waistLine(front.waist, back.waist),
        ...withTail(crotch.back, sizes),
        ...(gusseted ? { 'back-gusset': backGusset } : {}),
        'back-inseam': backInseam,
        hem: hemLine(back, front),
        'front-inseam': frontInseam,
        ...(gusseted ? { 'front-gusset': frontGusset } : {}),
        'front-crotch': crotch.front,
      },
      lines: {},
    };
  },
});

/** The back seam, left open for a tail where one is given. */
export function withTail(seam: Path, { tailAbove, tailLong }: Fed<never, 'tailAbove' | 'tailLong'>) {
  if (tailAbove === null || tailLong === null) return { 'back-crotch': seam };
  const [above, below] = splitPath(seam, tailAbove);
  const [tail, crotch] = splitPath(below, tailLong);
  return { 'back-above': above, tail, 'back-crotch': crotch };
}

/** Round the leg, square to both lines that come down to it. */
export function hemLine(back: Pick<Corners, 'fork' | 'hem'>, front: Pick<Corners, 'fork' | 'hem'>): Path {
  const third = (back.hem.x - front.hem.x) / 3;
  const beside = ({ fork, hem }: Pick<Corners, 'fork' | 'hem'>, inward: number) =>
    add(hem, scale(unit(point(hem.y - fork.y, fork.x - hem.x)), inward * third));
  return [cubic(back.hem, beside(back, -1), beside(front, 1), front.hem)];
}
