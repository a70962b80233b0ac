import { type Corners, crotchCurves, legCorners } from '../curves/crotch';
import { add, cubic, line, pathLength, point, scale, splitPath, unit } from '../geometry';
import { block } from './block';

const legSizes = ['legHalfHip', 'legRise', 'legRaised', 'legFork', 'legHem', 'legInside'] as const;

/** Below a gusset something of the inseam is left to sew, whatever the sizes. */
const MOST_GUSSETED = 0.9;

/**
 * One leg of trousers in one piece, without an outer seam: front at the left, back at the right; x from the middle of the
 * panel, y down from the front waist. Sizes in mm: `legHalfHip` half the finished hip, straight down to the crotch line at
 * `legRise`; `legRaised` how far the back rises above the front; `legFork` both forks together; `legHem` round;
 * `legInside` from the crotch line down. The waist is square to both centres, each crotch curve and the hem to the inseams. With a gusset
 * the top `legGusset` of each inseam is sewn to its side.
 */
export const leg = block({
  sizes: legSizes,
  optional: ['legGusset'],
  edges: ['waist', 'back-crotch', 'back-gusset', 'back-inseam', 'hem', 'front-inseam', 'front-gusset', 'front-crotch'],
  draw: (sizes) => {
    const { front, back } = legCorners(sizes);
    const crotch = crotchCurves(sizes);
    const middle = (front.hem.x + back.hem.x) / 2;
    const leaving = ({ fork, hem }: Corners) => {
      const square = unit(point(fork.y - hem.y, hem.x - fork.x));
      return add(hem, scale(square, (Math.sign(hem.x - middle) * sizes.legHem) / 3));
    };
    const third = (back.waist.x - front.waist.x) / 3;
    const waist = cubic(
      front.waist,
      { x: front.waist.x + third, y: front.waist.y },
      { x: back.waist.x - third, y: back.waist.y },
      back.waist,
    );
    const down = [line(back.fork, back.hem)];
    const up = [line(front.hem, front.fork)];
    const length = pathLength(down);
    const side = Math.min(sizes.legGusset ?? 0, MOST_GUSSETED * length);
    const [backGusset, backInseam] = splitPath(down, side);
    const [frontInseam, frontGusset] = splitPath(up, length - side);
    const sides = side > 0 ? { 'back-gusset': backGusset, 'front-gusset': frontGusset } : {};
    return {
      edges: {
        waist: [waist],
        'back-crotch': crotch.back,
        'back-inseam': backInseam,
        hem: [cubic(back.hem, leaving(back), leaving(front), front.hem)],
        'front-inseam': frontInseam,
        'front-crotch': crotch.front,
        ...sides,
      },
      lines: {},
    };
  },
});
