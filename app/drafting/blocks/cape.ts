import { backSweep } from '../curves/cape';
import { add, end, line, type Path, pathLength, point, scale, splitPath, start, startTangent } from '../geometry';
import { block } from './block';
import { flare, ringSector } from './flare';

/** Of half a neck, what lies behind the shoulder (common practice, no source); and the most of it a hood leaves free. */
const BEHIND = 0.45;
const MOST_CHIN = 0.3;

/**
 * Half a cape, on the fold behind: a sector, see `flare`; or, `flareHeight` long in front only, its hem sweeping down to
 * `capeBack` behind. Its neck is parted at the shoulder, and again where a hood leaves
 * `chinGap` mm of it free in front; the front lies `capePast` mm farther out, beside the line of the centre, to lap over the other.
 */
export const capeHalf = block({
  sizes: [...flare.sizes, 'capeBack'],
  optional: ['chinGap', 'capePast'],
  edges: ['neck-back', 'neck-front', 'chin', 'top-end', 'side', 'bottom-end', 'bottom', 'centre'],
  lines: ['centre-line'],
  draw: (sizes) => {
    const { top, side, bottom: round } = ringSector(sizes);
    const bottom = sizes.capeBack > sizes.flareHeight ? backSweep(side, sizes.capeBack) : round;
    const centre = [line(end(bottom), point(0, 0))];
    const lapped = sizes.capePast === null ? { side } : beside(side, sizes.capePast);
    const whole = pathLength(top);
    const [back, before] = splitPath(top, whole * BEHIND);
    const gap = Math.min(sizes.chinGap ?? 0, whole * MOST_CHIN);
    const [front, chin] = gap > 0 ? splitPath(before, pathLength(before) - gap) : [before, null];
    return {
      edges: { 'neck-back': back, 'neck-front': front, ...(chin ? { chin } : {}), ...lapped, bottom, centre },
      lines: sizes.capePast === null ? {} : { 'centre-line': side },
    };
  },
});

/** A straight side moved out by `past`, and what joins it to the corners it left, square to it. */
function beside(side: Path, past: number) {
  const [corner, foot] = [start(side), end(side)];
  const way = startTangent(side);
  const out = scale(point(way.y, -way.x), past);
  const [top, low] = [add(corner, out), add(foot, out)];
  return { 'top-end': [line(corner, top)], side: [line(top, low)], 'bottom-end': [line(low, foot)] };
}
