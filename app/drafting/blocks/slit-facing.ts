import { line, point } from '../geometry';
import { block } from './block';

/** Round a slit, this much cloth on either side and below is turned to the inside (common practice, no source). */
const BESIDE_MM = 25;
const BELOW_MM = 20;

/** The facing sewn round a slit before it is cut, half of it beside the fold. Sizes in mm: the slit's length, and how far it begins below the facing's top. */
export const slitFacing = block({
  sizes: ['slitLength'],
  optional: ['slitAbove'],
  edges: ['top', 'side', 'bottom', 'centre'],
  lines: ['slit'],
  draw: ({ slitLength, slitAbove }) => {
    const from = slitAbove ?? 0;
    const slit = from + slitLength;
    const low = slit + BELOW_MM;
    return {
      edges: {
        top: [line(point(0, 0), point(BESIDE_MM, 0))],
        side: [line(point(BESIDE_MM, 0), point(BESIDE_MM, low))],
        bottom: [line(point(BESIDE_MM, low), point(0, low))],
        centre: [line(point(0, low), point(0, 0))],
      },
      lines: { slit: [line(point(0, from), point(0, slit))] },
    };
  },
});
