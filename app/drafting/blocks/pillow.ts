import { gapIn } from '../curves/gap';
import { line, point } from '../geometry';
import { block } from './block';
import { gapAtEnd } from './gap';

/** Half a pillow's layer beside its fold: `pillowHalf` wide and `pillowDeep` high, mm, with a gap below to turn and fill it through. */
export const pillow = block({
  sizes: ['pillowHalf', 'pillowDeep'],
  edges: ['top', 'side', 'bottom', 'gap', 'centre'],
  draw: ({ pillowHalf, pillowDeep }) => ({
    edges: {
      top: [line(point(0, 0), point(pillowHalf, 0))],
      side: [line(point(pillowHalf, 0), point(pillowHalf, pillowDeep))],
      ...gapAtEnd('bottom', [line(point(pillowHalf, pillowDeep), point(0, pillowDeep))], gapIn(4 * pillowHalf) / 2),
      centre: [line(point(0, pillowDeep), point(0, 0))],
    },
    lines: {},
  }),
});
