import { arc, cubic, line, type Path, type Point, point } from '../geometry';
import { block } from './block';

/** Handle of a quarter circle, as a share of its radius. */
const QUARTER = 0.5523;
/** The front's lower corner is rounded by this share of its height. */
const ROUNDED = 0.3;

/**
 * Half a waistcoat in one piece beside its fold at the centre back, x right from it, y down from its upper edge, which folds over
 * as a collar. Sizes in mm: `vestHalf` to the front edge, `vestHigh` down, an armhole `vestHole` high and `vestHoleWide` wide,
 * its top `vestAbove` below the edge and its middle `vestAcross` from the fold.
 */
export const vest = block({
  sizes: ['vestHalf', 'vestHigh', 'vestAbove', 'vestAcross', 'vestHole', 'vestHoleWide'],
  edges: ['top', 'front', 'bottom', 'centre'],
  lines: ['armhole'],
  draw: ({ vestHalf, vestHigh, vestAbove, vestAcross, vestHole, vestHoleWide }) => {
    const radius = Math.min(vestHigh, vestHalf - vestAcross) * ROUNDED;
    return {
      edges: {
        top: [line(point(0, 0), point(vestHalf, 0))],
        front: [
          line(point(vestHalf, 0), point(vestHalf, vestHigh - radius)),
          ...arc(point(vestHalf - radius, vestHigh - radius), radius, 0, Math.PI / 2),
        ],
        bottom: [line(point(vestHalf - radius, vestHigh), point(0, vestHigh))],
        centre: [line(point(0, vestHigh), point(0, 0))],
      },
      lines: { armhole: oval(point(vestAcross, vestAbove + vestHole / 2), vestHoleWide / 2, vestHole / 2) },
    };
  },
});

/** An ellipse by four quarters, clockwise from its top. */
function oval({ x, y }: Point, across: number, high: number): Path {
  const quarter = (fx: number, fy: number, tx: number, ty: number) =>
    cubic(
      point(x + fx * across, y + fy * high),
      point(x + (fx + QUARTER * tx) * across, y + (fy + QUARTER * ty) * high),
      point(x + (tx + QUARTER * fx) * across, y + (ty + QUARTER * fy) * high),
      point(x + tx * across, y + ty * high),
    );
  return [quarter(0, -1, 1, 0), quarter(1, 0, 0, 1), quarter(0, 1, -1, 0), quarter(-1, 0, 0, -1)];
}
