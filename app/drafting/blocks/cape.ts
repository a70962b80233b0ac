import { line, pathLength, point, splitPath } from '../geometry';
import { block } from './block';
import { flare, ringSector } from './flare';

/** Of half a neck, what lies behind the shoulder (common practice, no source); and the most of it a hood leaves free. */
const BEHIND = 0.45;
const MOST_CHIN = 0.3;

/**
 * Half a cape, on the fold behind: a sector, see `flare`. Its neck is parted at the shoulder, and again where a hood leaves
 * `chinGap` mm of it free in front.
 */
export const capeHalf = block({
  sizes: flare.sizes,
  optional: ['chinGap'],
  edges: ['neck-back', 'neck-front', 'chin', 'side', 'bottom', 'centre'],
  draw: (sizes) => {
    const { top, side, bottom } = ringSector(sizes);
    const centre = [line(point(0, sizes.flareHeight), point(0, 0))];
    const whole = pathLength(top);
    const [back, before] = splitPath(top, whole * BEHIND);
    const gap = Math.min(sizes.chinGap ?? 0, whole * MOST_CHIN);
    const [front, chin] = gap > 0 ? splitPath(before, pathLength(before) - gap) : [before, null];
    return {
      edges: { 'neck-back': back, 'neck-front': front, ...(chin ? { chin } : {}), side, bottom, centre },
      lines: {},
    };
  },
});
