import type { Mm } from '../../body';
import { type Bounds, type Path, pathLength, pointAtLength } from '../geometry';
import type { Scene } from './guide-types';

/** A line is taken for a row of squares of this side, as a share of a letter: as wide as a line of stitches beside it. */
const SQUARE_SHARE = 0.2;

/** What the lines of a picture cover, so that no name is written over them: stitches, edges, middles, what ties numbers. */
export function strokesOf({ parts, ties, threads }: Scene, letters: Mm): readonly Bounds[] {
  const drawn = parts.flatMap(({ outline, middle, sewn, now, also, lines }) => [
    outline,
    middle,
    ...sewn,
    ...now,
    ...also,
    ...lines,
  ]);
  const all = [...drawn, ...ties, ...threads.map(({ path }) => path)];
  return all.flatMap((path) => squaresAlong(path, letters * SQUARE_SHARE));
}

function squaresAlong(path: Path, side: Mm): readonly Bounds[] {
  return path.flatMap((curve) => {
    const length = pathLength([curve]);
    const count = Math.max(1, Math.ceil(length / side));
    return Array.from({ length: count }, (_, index) => {
      const { x, y } = pointAtLength([curve], ((index + 0.5) / count) * length).point;
      return {
        left: x - side / 2,
        right: x + side / 2,
        top: y - side / 2,
        bottom: y + side / 2,
      };
    });
  });
}
