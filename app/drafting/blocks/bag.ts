import { arc, line, type Path, point } from '../geometry';
import { block } from './block';

/** The lower corners are rounded by this share of half the width. */
const ROUNDED = 0.5;

/**
 * Half a bag's layer beside its fold, x right from it, y down from its top, the lower corner rounded. Sizes in mm: `bagHalf`
 * wide, `bagLong` down to the bottom; where the other layer is shorter, the top `bagAbove` of the side is free.
 */
export const bag = block({
  sizes: ['bagHalf', 'bagLong'],
  optional: ['bagAbove'],
  edges: ['top', 'above', 'round', 'centre'],
  draw: ({ bagHalf, bagLong, bagAbove }) => {
    const from = bagAbove ?? 0;
    const radius = Math.min(bagHalf, bagLong - from) * ROUNDED;
    const round: Path = [
      line(point(bagHalf, from), point(bagHalf, bagLong - radius)),
      ...arc(point(bagHalf - radius, bagLong - radius), radius, 0, Math.PI / 2),
      line(point(bagHalf - radius, bagLong), point(0, bagLong)),
    ];
    return {
      edges: {
        top: [line(point(0, 0), point(bagHalf, 0))],
        ...(from > 0 ? { above: [line(point(bagHalf, 0), point(bagHalf, from))] } : {}),
        round,
        centre: [line(point(0, bagLong), point(0, 0))],
      },
      lines: {},
    };
  },
});
