import { brent, cubic, end, hermite, line, type Path, type Point, pathLength, point, splitPath } from '../geometry';
import { block, type Fed } from './block';
import { heightAt } from './height';

/** Where the head is deepest, as a share of the face edge's height, from the neck up (common practice, no source). */
const DEEPEST_AT = 0.52;
/** The nape stays below this share of the face edge's height. */
const HIGHEST_NAPE = 0.35;
const SOLVED_MM = 1e-5;
/** An ear's opening keeps this far from the ends of its seam, and a slit this far from the edges. */
const LEAST_SEAM_MM = 12;

/** Where an ear comes through: how far from the face edge, how long the opening in the seam; or a slit so far below the crown. */
const EAR = ['earFrom', 'earOpen'] as const;
const SLIT = ['earSlit', 'earInset'] as const;
type Ear = Fed<never, (typeof EAR)[number]>;

/**
 * One side of a hood: chin at the origin, face edge up to the crown, y down, the back of the head at the right. The
 * crown is square to the face edge and to the neck edge. Sizes in mm: `hoodFront` half the face edge, `hoodDepth` face
 * edge to back of the head, `hoodNeck` the neck edge's length; `hoodRound` how full the crown is (0.4
 * flat, 0.85 boxy) and `napeRise` how much higher the nape lies than the chin, as a share of the neck edge;
 * `napeOpen` is the share of the crown left open above the nape. `earOpen` mm of the crown, or a slit of `earSlit` mm
 * inside, are left for an ear as far as there is room.
 */
export const hoodSide = block({
  sizes: ['hoodFront', 'hoodDepth', 'hoodNeck', 'hoodRound', 'napeRise'],
  optional: ['napeOpen', ...EAR, ...SLIT],
  edges: ['face', 'crown', 'crown-front', 'ear', 'crown-back', 'opening', 'neck'],
  lines: ['ear'],
  draw: (sizes) => {
    const { hoodFront, hoodDepth, hoodNeck, hoodRound, napeRise, napeOpen } = sizes;
    const neck = neckEdge(hoodNeck, napeRise, hoodFront);
    const nape = neck[0]?.from ?? point(hoodNeck, 0);
    const top = point(0, -hoodFront);
    const whole = crown(top, nape, hoodDepth, hoodFront, hoodRound);
    const [sewn, opening] = splitPath(whole, pathLength(whole) * (1 - (napeOpen ?? 0)));
    return {
      edges: {
        face: [line(point(0, 0), top)],
        ...withEar('crown', sewn, sizes),
        ...(napeOpen === null ? {} : { opening }),
        neck,
      },
      lines: sizes.earSlit === null ? {} : { ear: earSlit(whole, neck, sizes, sizes.earSlit) },
    };
  },
});

/** From the nape, level and square to the crown, down to the chin; `length` mm. */
function neckEdge(length: number, rise: number, front: number): Path {
  const draw = (width: number): Path => {
    const nape = point(width, -Math.min(rise * width, front * HIGHEST_NAPE));
    return [cubic(nape, point(width * 0.62, nape.y), point(width * 0.3, 0), point(0, 0))];
  };
  const solved = brent((width) => pathLength(draw(width)) - length, length * 0.5, length, { tolerance: SOLVED_MM });
  return draw(solved.ok ? solved.x : length);
}

/** From the top of the face edge over the back of the head to the nape, upright where the head is deepest. */
function crown(top: Point, nape: Point, depth: number, front: number, fullness: number): Path {
  const deep = Math.max(depth, nape.x);
  const level = -front * DEEPEST_AT;
  const back = point(deep, level);
  const over = cubic(top, point(deep * fullness, top.y), point(deep, level + (top.y - level) * fullness), back);
  const [inward, drop] = [deep - nape.x, nape.y - level];
  const handle = Math.min(0.36 + 0.1 * Math.min(inward / drop, 1), drop / Math.hypot(inward, drop));
  return [over, hermite(end([over]), point(0, 1), nape, point(0, 1), handle, handle)];
}

/**
 * The strip between the two sides of a three-part hood, half of it beside the fold; y down from the face edge to the
 * nape. Its long edge is square to both ends. Sizes in mm: `stripFace`, `stripNape` half widths, `hoodCrown` along the fold.
 */
export const hoodStrip = block({
  sizes: ['stripFace', 'stripNape', 'hoodCrown'],
  optional: EAR,
  edges: ['face', 'side', 'side-front', 'ear', 'side-back', 'nape', 'centre'],
  draw: (sizes) => {
    const { stripFace, stripNape, hoodCrown } = sizes;
    const down = point(0, 1);
    return {
      edges: {
        face: [line(point(0, 0), point(stripFace, 0))],
        ...withEar('side', [hermite(point(stripFace, 0), down, point(stripNape, hoodCrown), down, 0.4, 0.4)], sizes),
        nape: [line(point(stripNape, hoodCrown), point(0, hoodCrown))],
        centre: [line(point(0, hoodCrown), point(0, 0))],
      },
      lines: {},
    };
  },
});

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
  { earFrom, earInset }: Fed<never, 'earFrom' | 'earInset'>,
  length: number,
): Path {
  const nape = neck[0]?.from.x ?? 0;
  const x = Math.min(Math.max(earFrom ?? 0, LEAST_SEAM_MM), nape - LEAST_SEAM_MM);
  const high = heightAt(crown, x) + LEAST_SEAM_MM;
  const low = heightAt(neck, x) - LEAST_SEAM_MM;
  const wished = Math.min(Math.max(high + (earInset ?? 0) - LEAST_SEAM_MM, high), low - length);
  const top = Math.max(wished, high);
  return [line(point(x, top), point(x, Math.max(Math.min(top + length, low), top + 1)))];
}
