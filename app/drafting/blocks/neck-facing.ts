import { neckline } from '../curves/neckline';
import { brent, ellipseQuarter, end, line, type Path, pathLength, point, splitPath } from '../geometry';
import { block } from './block';

/** A facing is this wide, or as wide as the shoulder it lies under allows; beside and below a slit, so much. */
const WIDTH_MM = 22;
const SOLVED_MM = 1e-4;

/**
 * Half a neck facing: the neckline itself, and an outer edge a facing's width from it, square to centre and shoulder. Where a
 * slit of `slitLength` mm runs down the centre, the facing reaches down beside it and below its end.
 */
export const neckFacing = block({
  sizes: ['neckHalfWidth', 'neckDrop', 'slope', 'shoulder'],
  optional: ['slitLength'],
  edges: ['neckline', 'shoulder', 'outer', 'centre'],
  lines: ['slit'],
  draw: ({ neckHalfWidth, neckDrop, slope, shoulder, slitLength }) => {
    const width = Math.min(WIDTH_MM, shoulder);
    const corner = point(neckHalfWidth + width * Math.cos(slope), width * Math.sin(slope));
    const low = neckDrop + width;
    const round = [ellipseQuarter(corner, point(-Math.sin(slope), Math.cos(slope)), point(0, low), point(-1, 0))];
    const outer = slitLength === null ? round : besideSlit(round, neckDrop + slitLength + WIDTH_MM);
    return {
      edges: {
        neckline: neckline(neckHalfWidth, neckDrop, slope),
        shoulder: [line(point(neckHalfWidth, 0), corner)],
        outer,
        centre: [line(end(outer), point(0, neckDrop))],
      },
      lines: slitLength === null ? {} : { slit: [line(point(0, neckDrop), point(0, neckDrop + slitLength))] },
    };
  },
});

/** The round outer edge as far as beside the slit, then down past the slit's end and across to the centre. */
function besideSlit(round: Path, low: number): Path {
  const length = pathLength(round);
  const beside = Math.min(WIDTH_MM, (round[0]?.from.x ?? 0) / 2);
  const xAt = (s: number) => end(splitPath(round, s)[0]).x - beside;
  const solved = brent(xAt, length * 0.01, length * 0.99, { tolerance: SOLVED_MM });
  const [kept] = splitPath(round, solved.ok ? solved.x : length / 2);
  const turn = end(kept);
  return [...kept, line(turn, point(turn.x, low)), line(point(turn.x, low), point(0, low))];
}
