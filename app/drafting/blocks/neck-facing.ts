import type { Block } from '../garments/garment';
import { ellipseQuarter, line, point } from '../geometry';
import { neckline } from './neckline';

/** A facing is this wide, or as wide as the shoulder it lies under allows. */
const WIDTH_MM = 22;

/** Half a neck facing: the neckline itself, and an outer edge a facing's width from it, square to centre and shoulder. */
export const neckFacing: Block = {
  sizes: ['neckHalfWidth', 'neckDrop', 'slope', 'shoulder'],
  draw: ({ neckHalfWidth = 0, neckDrop = 0, slope = 0, shoulder = 0 }) => {
    const width = Math.min(WIDTH_MM, shoulder);
    const end = point(neckHalfWidth + width * Math.cos(slope), width * Math.sin(slope));
    const low = neckDrop + width;
    const outer = ellipseQuarter(end, point(-Math.sin(slope), Math.cos(slope)), point(0, low), point(-1, 0));
    return {
      edges: {
        neckline: neckline(neckHalfWidth, neckDrop, slope),
        shoulder: [line(point(neckHalfWidth, 0), end)],
        outer: [outer],
        centre: [line(point(0, low), point(0, neckDrop))],
      },
      lines: {},
    };
  },
};
