import { sockSeam } from '../curves/sock';
import { line, point } from '../geometry';
import { block } from './block';

/**
 * Half a sock beside its fold, which runs down the front of the leg and over the instep; x right from it, y down from the top.
 * Sizes in mm: `sockTop` and `sockFoot` half round the top and the foot; where the top is wider it is so for `sockEven`, and from
 * `sockHigh` down as wide as the foot; `sockLong` down the fold, `sockToe` the last of it, over which the seam rounds the toes.
 */
export const sock = block({
  sizes: ['sockTop', 'sockFoot', 'sockEven', 'sockHigh', 'sockLong', 'sockToe'],
  edges: ['top', 'round', 'centre'],
  draw: (frame) => ({
    edges: {
      top: [line(point(0, 0), point(frame.sockTop, 0))],
      round: sockSeam(frame),
      centre: [line(point(0, frame.sockLong), point(0, 0))],
    },
    lines: {},
  }),
});
