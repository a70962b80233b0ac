import {
  add,
  brent,
  cubic,
  end,
  hermite,
  line,
  norm,
  type Path,
  type Point,
  pathLength,
  point,
  scale,
  splitPath,
  subtract,
} from '../geometry';
import { block, type Fed } from './block';
import { heightAt } from './height';
import { laidPleats, pleatLines } from './neck-pleats';

/** Where the head is deepest, as a share of the face edge's height, from the neck up (common practice, no source). */
const DEEPEST_AT = 0.52;
/** The nape stays below this share of the face edge's height. */
const HIGHEST_NAPE = 0.35;
/** A neck edge wider than the head is deep leans the face edge back from the chin, up to this angle, radians. */
const MOST_LEAN = (22 * Math.PI) / 180;
/** The back of the head runs to the nape by this share of the slope between them, and never more aslant, radians. */
const NAPE_SLOPE = 0.8;
const MOST_NAPE_SLOPE = (16 * Math.PI) / 180;
/** Handles of the neck edge and of the back of the head, as shares of their chords. */
const NECK_HANDLE = 0.36;
const BACK_HANDLE = 0.38;
/** The crown's handles keep at least this share of its chord, however the face leans. */
const LEAST_REACH = 0.15;
const SOLVED_MM = 1e-5;
/** An ear's opening keeps this far from the ends of its seam, and a slit this far from the edges. */
const LEAST_SEAM_MM = 12;

/** Where an ear comes through: how far from the face edge, how long the opening in the seam; or a slit so far below the crown. */
const EAR = ['earFrom', 'earOpen'] as const;
const SLIT = ['earSlit', 'earInset'] as const;
const SIDE = ['hoodFront', 'hoodDepth', 'hoodNeck', 'hoodRound', 'napeRise'] as const;
type Ear = Fed<never, (typeof EAR)[number]>;
/** What the lines of a side are drawn from, mm; see `hoodSide`. */
export type HoodSide = Fed<(typeof SIDE)[number]>;

/**
 * One side of a hood: chin at the origin, face edge up to the crown, y down, the back of the head at the right. The
 * crown is square to the face edge and to the neck edge, the neck edge to the face edge. Sizes in mm: `hoodFront` half the face
 * edge, `hoodDepth` face edge to back of the head, level; `hoodNeck` the neck edge's length, of which `hoodBehind` lies behind
 * the shoulder and `neckPleats` are laid in pleats there; `hoodRound` how full the crown is (0.4 flat, 0.85 boxy) and
 * `napeRise` how much higher the nape lies than the chin, as a share of the neck edge; `napeOpen` is the share of the crown left
 * open above the nape. `earOpen` mm of the crown, or a slit of `earSlit` mm inside, are left for an ear as far as there is room.
 */
export const hoodSide = block({
  sizes: [...SIDE, 'hoodBehind', 'neckPleats'],
  optional: ['napeOpen', ...EAR, ...SLIT],
  edges: ['face', 'crown', 'crown-front', 'ear', 'crown-back', 'opening', 'neck-back', 'neck-front'],
  lines: ['ear', 'fold', 'place'],
  draw: (sizes) => {
    const { over, behind, neck, top } = sideLines(sizes);
    const crown = [...over, ...behind];
    const [sewn, opening] = splitPath(crown, pathLength(crown) * (1 - (sizes.napeOpen ?? 0)));
    const [neckBack, neckFront] = splitPath(neck, Math.min(sizes.hoodBehind, sizes.hoodNeck * 0.95));
    const face = [line(point(0, 0), top)];
    return {
      edges: {
        face,
        ...withEar('crown', sewn, sizes),
        ...(sizes.napeOpen === null ? {} : { opening }),
        'neck-back': neckBack,
        'neck-front': neckFront,
      },
      lines: {
        ...(sizes.earSlit === null ? {} : { ear: earSlit(crown, neck, top, sizes, sizes.earSlit) }),
        ...pleatLines(laidPleats(pathLength(neckBack), sizes.neckPleats), neckBack, [crown, face]),
      },
    };
  },
});

type SideLines = { readonly top: Point; readonly over: Path; readonly behind: Path; readonly neck: Path };

/** A side's lines: the neck edge as long as asked, the rest as wide as it makes them. */
function sideLines(s: HoodSide): SideLines {
  const long = (width: number) => pathLength(linesOf(s, width).neck) - s.hoodNeck;
  const solved = brent(long, s.hoodNeck * 0.4, s.hoodNeck * 1.05, { tolerance: SOLVED_MM });
  return linesOf(s, solved.ok ? solved.x : s.hoodNeck);
}

/** How far along the crown the head is deepest, mm from the face edge. */
export function deepestAt(sizes: HoodSide): number {
  return pathLength(sideLines(sizes).over);
}

/** With the nape `width` before the chin. */
function linesOf({ hoodFront, hoodDepth, hoodRound, napeRise }: HoodSide, width: number): SideLines {
  const short = Math.max(width - hoodDepth, 0) / (hoodFront * DEEPEST_AT);
  const lean = Math.asin(Math.min(short, Math.sin(MOST_LEAN)));
  const up = point(Math.sin(lean), -Math.cos(lean));
  const inward = point(Math.cos(lean), Math.sin(lean));
  const top = scale(up, hoodFront);
  const nape = point(width, -Math.min(napeRise * width, hoodFront * HIGHEST_NAPE));
  const level = scale(up, hoodFront * DEEPEST_AT);
  const back = point(level.x + hoodDepth, level.y);
  const slope = Math.atan2(nape.x - back.x, nape.y - back.y) * NAPE_SLOPE;
  const aslant = Math.max(-MOST_NAPE_SLOPE, Math.min(slope, MOST_NAPE_SLOPE));
  const down = point(Math.sin(Math.max(aslant, 0)), Math.cos(Math.max(aslant, 0)));
  const toNape = point(Math.sin(aslant), Math.cos(aslant));
  const handle = NECK_HANDLE * width;
  return {
    top,
    over: [crownOver(top, inward, back, down, hoodRound)],
    behind: [hermite(back, down, nape, toNape, BACK_HANDLE, BACK_HANDLE)],
    neck: [cubic(nape, add(nape, scale(point(-toNape.y, toNape.x), handle)), scale(inward, handle), point(0, 0))],
  };
}

/** From the top of the face edge, square to it, to where the head is deepest: full as far as its two directions meet. */
function crownOver(top: Point, leave: Point, back: Point, arrive: Point, fullness: number) {
  const way = subtract(back, top);
  const turn = leave.x * arrive.y - leave.y * arrive.x;
  const least = LEAST_REACH * norm(way);
  const ahead = Math.max((way.x * arrive.y - way.y * arrive.x) / turn, least);
  const above = Math.max((leave.x * way.y - leave.y * way.x) / turn, least);
  return cubic(top, add(top, scale(leave, ahead * fullness)), subtract(back, scale(arrive, above * fullness)), back);
}

/**
 * The strip between the two sides of a three-part hood, half of it beside the fold; y down from the face edge to the
 * nape. Its long edge is square to both ends and as long as `stripSide`, straight as far as the head is deepest
 * (`stripEven`), so that it adds as much to the depth as to the face edge. `stripFace`, `stripNape` are half widths, mm.
 */
export const hoodStrip = block({
  sizes: ['stripFace', 'stripNape', 'stripSide', 'stripEven'],
  optional: EAR,
  edges: ['face', 'side', 'side-front', 'ear', 'side-back', 'nape', 'centre'],
  draw: (sizes) => {
    const { stripFace, stripNape, stripSide, stripEven } = sizes;
    const tail = Math.abs(stripFace - stripNape) * LEAST_TAIL;
    const even = Math.max(Math.min(stripEven, stripSide * 0.9, stripSide - tail), 0);
    const side = (length: number): Path => [
      line(point(stripFace, 0), point(stripFace, even)),
      hermite(point(stripFace, even), DOWN, point(stripNape, length), DOWN, 0.4, 0.4),
    ];
    const over = (length: number) => pathLength(side(length)) - stripSide;
    const solved = brent(over, even + 1, stripSide, { tolerance: SOLVED_MM });
    const long = solved.ok ? solved.x : stripSide;
    return {
      edges: {
        face: [line(point(0, 0), point(stripFace, 0))],
        ...withEar('side', side(long), sizes),
        nape: [line(point(stripNape, long), point(0, long))],
        centre: [line(point(0, long), point(0, 0))],
      },
      lines: {},
    };
  },
});
const DOWN = point(0, 1);
/** A strip takes at least so many times what it narrows by to do so. */
const LEAST_TAIL = 1.5;

/** A seam over the head, whole or with an opening for an ear between its front and its back. */
function withEar(name: string, path: Path, { earFrom, earOpen }: Ear): Record<string, Path> {
  if (earOpen === null || earFrom === null) return { [name]: path };
  const length = pathLength(path);
  const from = Math.min(Math.max(earFrom, LEAST_SEAM_MM), length / 2);
  const open = Math.min(earOpen, length - from - Math.min(LEAST_SEAM_MM, length / 4));
  const [front, behind] = splitPath(path, from);
  const [ear, back] = splitPath(behind, open);
  return { [`${name}-front`]: front, ear, [`${name}-back`]: back };
}

/** Upright, below the crown, as far from the face edge as the ear but within the neck; moved up where the neck edge is too near. */
function earSlit(
  crown: Path,
  neck: Path,
  top: Point,
  { earFrom, earInset }: Fed<never, 'earFrom' | 'earInset'>,
  length: number,
): Path {
  const nape = end(crown).x;
  const x = Math.min(top.x + Math.max(earFrom ?? 0, LEAST_SEAM_MM), nape - LEAST_SEAM_MM);
  const high = heightAt(crown, x) + LEAST_SEAM_MM;
  const low = heightAt(neck, x) - LEAST_SEAM_MM;
  const wished = Math.min(Math.max(high + (earInset ?? 0) - LEAST_SEAM_MM, high), low - length);
  const from = Math.max(wished, high);
  return [line(point(x, from), point(x, Math.max(Math.min(from + length, low), from + 1)))];
}
