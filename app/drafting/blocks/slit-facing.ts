import { neckline } from '../curves/neckline';
import { type Curve, end, line, type Path, type Point, point, splitPath } from '../geometry';
import { block } from './block';

/** Round a slit, this much cloth on either side and below is turned to the inside (common practice, no source). */
const BESIDE_MM = 25;
const BELOW_MM = 20;
/** From the neck down it is no wider than this share of what it lies on, and takes no more than this share of the neckline. */
const MOST_OF_WIDTH = 0.5;
const MOST_OF_NECK = 0.6;

/** The facing sewn round a slit inside a piece before it is cut, half of it beside the fold. Sizes in mm: the slit's length, and how far it begins below the facing's top. */
export const slitFacing = block({
  sizes: ['slitLength', 'slitAbove'],
  edges: ['top', 'side', 'bottom', 'centre'],
  lines: ['slit'],
  draw: ({ slitLength, slitAbove }) =>
    round([line(point(0, 0), point(BESIDE_MM, 0))], {
      foot: point(BESIDE_MM, slitAbove + slitLength + BELOW_MM),
      slit: line(point(0, slitAbove), point(0, slitAbove + slitLength)),
    }),
});

/**
 * The same round a slit that runs down from the neck, where its top is the neckline itself, to lie along it. Sizes in mm, `slope`
 * in radians: the whole neckline's, how much of it the piece has (`neckLong`), and half that piece's width, `chestHalf`.
 */
export const neckSlitFacing = block({
  sizes: ['neckHalfWidth', 'neckDrop', 'slope', 'neckLong', 'chestHalf', 'slitLength'],
  edges: ['top', 'side', 'bottom', 'centre'],
  lines: ['slit'],
  draw: ({ neckHalfWidth, neckDrop, slope, neckLong, chestHalf, slitLength }) => {
    const beside = Math.min(BESIDE_MM, chestHalf * MOST_OF_WIDTH);
    const [top] = splitPath(neckline(neckHalfWidth, neckDrop, slope), Math.min(beside, neckLong * MOST_OF_NECK));
    const tip = neckDrop + slitLength;
    return round(top, {
      foot: point(Math.max(end(top).x, beside), tip + Math.min(BELOW_MM, beside)),
      slit: line(point(0, neckDrop), point(0, tip)),
    });
  },
});

type Round = { readonly foot: Point; readonly slit: Curve };

function round(top: Path, { foot, slit }: Round) {
  const middle = point(0, foot.y);
  return {
    edges: {
      top,
      side: [line(end(top), foot)],
      bottom: [line(foot, middle)],
      centre: [line(middle, top[0]?.from ?? middle)],
    },
    lines: { slit: [slit] },
  };
}
