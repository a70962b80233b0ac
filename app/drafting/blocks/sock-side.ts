import { sockSeams } from '../curves/sock-side';
import { line, point } from '../geometry';
import { block } from './block';

/**
 * One side of a sock, seen from there: toe to the right, x right from the middle of the leg, y down from the top. Sizes in mm:
 * `sockTop` and `sockLeg` how wide at the top and at the ankle; where the top is wider it is so for `sockEven`, and from `sockHigh`
 * down as wide as the ankle; `sockTall` from the top to the sole, `sockAcross` from the heel to the instep, `sockSole` along
 * the sole to the toe, all to corners, which are rounded: the heel within `sockTurn`.
 */
export const sockSide = block({
  sizes: ['sockTop', 'sockLeg', 'sockEven', 'sockHigh', 'sockTall', 'sockAcross', 'sockSole', 'sockTurn'],
  edges: ['top', 'front', 'round'],
  draw: (frame) => ({
    edges: { top: [line(point(-frame.sockTop / 2, 0), point(frame.sockTop / 2, 0))], ...sockSeams(frame) },
    lines: {},
  }),
});
