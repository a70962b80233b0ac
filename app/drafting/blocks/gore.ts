import { type GoreFrame, goreSeam } from '../curves/gore';
import {
  brent,
  end,
  endTangent,
  hermite,
  line,
  type Path,
  pathLength,
  point,
  reversePath,
  splitPath,
  transformPath,
} from '../geometry';
import { block, type Fed } from './block';

const SOLVED_MM = 1e-3;
/** How much the frame may differ from what is asked of the brim. */
const NARROWEST = 0.8;
const WIDEST = 1.6;
const SIZES = ['goreCount', 'goreRound', 'goreOver'] as const;

/** Half a gore beside its fold, its crown at 0, 0, y down: seams as long as the way down its middle, so the brim is curved. */
export const gore = block({
  sizes: SIZES,
  edges: ['side', 'brim', 'centre'],
  draw: (sizes) => {
    const seam = seamOf(sizes);
    return {
      edges: {
        side: seam,
        brim: halfBrim(seam, sizes.goreOver),
        centre: [line(point(0, sizes.goreOver), point(0, 0))],
      },
      lines: {},
    };
  },
});

/** A whole gore beside an ear, which comes through its right seam from `earFrom` below the crown for `earLong` mm, or down to the brim. */
export const earGore = block({
  sizes: [...SIZES, 'earFrom'],
  optional: ['earLong'],
  edges: ['above', 'ear', 'below', 'brim', 'side'],
  draw: (sizes) => {
    const seam = seamOf(sizes);
    const [above, rest] = splitPath(seam, sizes.earFrom);
    const [ear, below] = splitPath(rest, sizes.earLong ?? pathLength(rest));
    const brim = halfBrim(seam, sizes.goreOver);
    return {
      edges: {
        above,
        ear,
        ...(sizes.earLong === null ? {} : { below }),
        brim: [...brim, ...reversePath(mirrored(brim))],
        side: reversePath(mirrored(seam)),
      },
      lines: {},
    };
  },
});

const mirrored = (path: Path) => transformPath(path, ({ x, y }) => point(-x, y));

/** What a gore is drawn from widens until all brims together are `goreRound`: they end above the widest place. */
function seamOf({ goreCount, goreRound, goreOver }: Fed<(typeof SIZES)[number]>): Path {
  const seam = (round: number) => endedAt(goreOver, { count: goreCount, round, over: goreOver });
  const left = (round: number) => 2 * goreCount * pathLength(halfBrim(seam(round), goreOver)) - goreRound;
  const most = Math.min(WIDEST * goreRound, 2 * Math.PI * goreOver);
  const solved = brent(left, goreRound * NARROWEST, most, { tolerance: SOLVED_MM });
  return seam(solved.ok ? solved.x : most);
}

/** The seam, ended where it is as long as the middle. */
function endedAt(over: number, frame: GoreFrame): Path {
  const solved = brent((until) => pathLength(goreSeam(frame, until)) - over, over / 2, over, { tolerance: SOLVED_MM });
  return goreSeam(frame, solved.ok ? solved.x : over);
}

/** From the seam's end, square to it, to the middle, square to the fold. */
function halfBrim(seam: Path, over: number): Path {
  const down = endTangent(seam);
  return [hermite(end(seam), point(-down.y, down.x), point(0, over), point(-1, 0), 1 / 3, 1 / 3)];
}
