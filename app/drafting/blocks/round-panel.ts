import { line, point } from '../geometry';
import { block } from './block';

/**
 * Half a straight front or back beside its fold; x right from it, y down from the top. Sizes in mm: `tunicHalf` wide, `tunicLong`
 * down; a wing comes through its side from `wingFrom` below the top for `wingLong` mm.
 */
export const roundPanel = block({
  sizes: ['tunicHalf', 'tunicLong'],
  optional: ['wingFrom', 'wingLong'],
  edges: ['top', 'seam', 'above', 'wing', 'below', 'hem', 'centre'],
  draw: ({ tunicHalf: half, tunicLong: long, wingFrom, wingLong }) => {
    const down = (from: number, to: number) => [line(point(half, from), point(half, to))];
    const side =
      wingFrom === null || wingLong === null
        ? { seam: down(0, long) }
        : {
            above: down(0, wingFrom),
            wing: down(wingFrom, wingFrom + wingLong),
            below: down(wingFrom + wingLong, long),
          };
    return {
      edges: {
        top: [line(point(0, 0), point(half, 0))],
        ...side,
        hem: [line(point(half, long), point(0, long))],
        centre: [line(point(0, long), point(0, 0))],
      },
      lines: {},
    };
  },
});
