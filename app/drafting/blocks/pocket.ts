import { end, flatten, lerp, line, type Path, pathBounds, point, start } from '../geometry';
import { block, type Fed } from './block';
import { heightAt } from './height';

/** A pocket reaches this share of the narrowest half front, and its top this share of that (common practice, no source). */
const WIDTH_SHARE = 0.62;
const TOP_SHARE = 0.58;
/** It covers this share of the front between neckline and hem, where the hand edges ask for no more. */
const HEIGHT_SHARE = 0.45;
/** Below its hand edges, a side of at least this share of the height, and this many mm. */
const SIDE_SHARE = 0.22;
const LEAST_SIDE_MM = 8;
/** Clear of seams, neckline and slit by this much, so that its own hems lie free. */
const CLEAR_MM = 12;
/** A patch is so high for its width, takes at most this share of a half front, and lies so far from a centre that does not open (common practice, no source). */
const PATCH_HIGH = 1.15;
const PATCH_SHARE = 0.7;
/** A patch beside a dart, or two, reaches so far out, as a share of the half front: they stand between it and the side. */
const BESIDE_DARTS = [1, 0.58, 0.44] as const;
const BESIDE_CENTRE_MM = 8;
/** What is drawn where there is no room at all: too small to be kept. */
const NO_ROOM_MM = 4;
const FLAT_MM = 0.5;

/**
 * Sizes a front places a pocket by: `pocketHand` the wished hand edge, `pocketFrom` the hem and, where the front opens,
 * `pocketBeside` the centre line to its near edge; `pocketPatch` the wished width of a patch on either side instead, mm.
 */
export const pocketSizes = ['pocketHand', 'pocketFrom', 'pocketBeside', 'pocketPatch'] as const;
export const pocketPlace = ['pocket-top', 'pocket-hand', 'pocket-side', 'pocket-bottom', 'pocket-centre'] as const;
type Place = Partial<Record<(typeof pocketPlace)[number], Path>>;
type Wished = Fed<never, (typeof pocketSizes)[number]>;

/** Seam lines of a half front that a pocket keeps clear of; `high` is where it may begin, mm below the shoulder; `darts`: so many stand beside it. */
export type Ground = {
  readonly armhole: Path;
  readonly side: Path;
  readonly hem: Path;
  readonly high: number;
  readonly darts: number;
};

/** Where the pocket is stitched on a half front: a straight top, a slanted hand edge left open, a side and a bottom. */
export function pocketLines(wished: Wished, ground: Ground): Place {
  if (wished.pocketPatch !== null && wished.pocketFrom !== null)
    return patchLines(wished.pocketPatch, wished.pocketFrom, wished.pocketBeside ?? BESIDE_CENTRE_MM, ground);
  if (wished.pocketHand === null || wished.pocketFrom === null) return {};
  const { pocketHand, pocketFrom } = wished;
  const pocketBeside = wished.pocketBeside ?? 0;
  const { armhole, side, hem, high } = ground;
  const narrowest = Math.min(start(side).x, end(side).x);
  const out = Math.max(Math.min(narrowest * WIDTH_SHARE, narrowest - CLEAR_MM), pocketBeside + NO_ROOM_MM);
  const low = lowest(hem, out) - pocketFrom;
  const arm = pathBounds(armhole);
  const room = Math.max(low - Math.max(high + CLEAR_MM, (arm.top + arm.bottom) / 2), NO_ROOM_MM);
  const across = Math.max(out * TOP_SHARE, pocketBeside + NO_ROOM_MM / 2);
  const upright = Math.sqrt(Math.max(pocketHand ** 2 - (out - across) ** 2, 0));
  const height = Math.min(Math.max((low - high) * HEIGHT_SHARE, upright + LEAST_SIDE_MM), room);
  const top = low - height;
  const near = Math.min(across, leftmost(armhole, top - CLEAR_MM) - CLEAR_MM);
  const inner = Math.max(near, pocketBeside + NO_ROOM_MM / 2);
  const below = Math.min(Math.max(Math.min(height * SIDE_SHARE, height - upright), LEAST_SIDE_MM), height / 2);
  const hand = low - below;
  return {
    'pocket-top': [line(point(pocketBeside, top), point(inner, top))],
    'pocket-hand': [line(point(inner, top), point(out, hand))],
    'pocket-side': [line(point(out, hand), point(out, low))],
    'pocket-bottom': [line(point(out, low), point(pocketBeside, low))],
    ...(pocketBeside > 0 ? { 'pocket-centre': [line(point(pocketBeside, low), point(pocketBeside, top))] } : {}),
  };
}

/** A patch between the centre line, or what is folded back beside it, and the side; a little higher than wide, clear of the armhole. */
function patchLines(wished: number, from: number, beside: number, { armhole, side, hem, high, darts }: Ground): Place {
  const narrowest = Math.min(start(side).x, end(side).x);
  const far = Math.min(narrowest - CLEAR_MM, darts > 0 ? start(side).x * (BESIDE_DARTS[darts] ?? 1) : narrowest);
  const wide = Math.max(Math.min(wished, (far - beside) * PATCH_SHARE), NO_ROOM_MM);
  const low = lowest(hem, beside + wide) - from;
  const arm = pathBounds(armhole);
  const top = Math.max(low - wide * PATCH_HIGH, high + CLEAR_MM, (arm.top + arm.bottom) / 2);
  const upper = Math.min(top, low - NO_ROOM_MM);
  const out = Math.max(Math.min(far, leftmost(armhole, upper - CLEAR_MM) - CLEAR_MM), beside + NO_ROOM_MM);
  const across = Math.min(wide, out - beside);
  const inner = beside + (out - beside - across) / 2;
  const outer = inner + across;
  // Where it lies at last, farther out than it was first laid, the hem may rise higher.
  const base = Math.min(low, lowest(hem, outer) - from);
  const above = Math.min(upper, base - NO_ROOM_MM);
  return {
    'pocket-top': [line(point(inner, above), point(outer, above))],
    'pocket-side': [line(point(outer, above), point(outer, base))],
    'pocket-bottom': [line(point(outer, base), point(inner, base))],
    'pocket-centre': [line(point(inner, base), point(inner, above))],
  };
}

/** What a dart on the same front keeps clear of: a wide pocket lets it run out under its open edge, a patch does not. */
export function pocketedBy({
  'pocket-hand': hand,
  'pocket-side': side,
}: Place): { readonly out: number; readonly ends: number | null } | null {
  if (hand) return { out: start(hand).x, ends: end(hand).y };
  return side ? { out: start(side).x, ends: null } : null;
}

/** How far out an armhole begins below this height; infinite where it ends above. */
function leftmost(armhole: Path, below: number): number {
  const points = flatten(armhole, FLAT_MM);
  return Math.min(
    ...points.flatMap((p, index) => {
      const before = points[index - 1] ?? p;
      const crosses = p.y > below !== before.y > below;
      const across = crosses ? [lerp(before, p, (below - before.y) / (p.y - before.y)).x] : [];
      return p.y > below ? [p.x, ...across] : across;
    }),
  );
}

/** The hem's highest place under the pocket. */
function lowest(hem: Path, out: number): number {
  return Math.min(...flatten(hem, FLAT_MM).flatMap((p) => (p.x <= out ? [p.y] : [])), heightAt(hem, out));
}

/** The pocket itself, half of it: as its place on the front, whose lengths in mm it is drawn from. */
export const pocket = block({
  sizes: ['pocketTop', 'pocketHandEdge', 'pocketSide', 'pocketBottom'],
  edges: ['top', 'hand', 'side', 'bottom', 'centre'],
  draw: ({ pocketTop, pocketHandEdge, pocketSide, pocketBottom }) => {
    const hand = Math.sqrt(Math.max(pocketHandEdge ** 2 - (pocketBottom - pocketTop) ** 2, 0));
    const low = hand + pocketSide;
    return {
      edges: {
        top: [line(point(0, 0), point(pocketTop, 0))],
        hand: [line(point(pocketTop, 0), point(pocketBottom, hand))],
        side: [line(point(pocketBottom, hand), point(pocketBottom, low))],
        bottom: [line(point(pocketBottom, low), point(0, low))],
        centre: [line(point(0, low), point(0, 0))],
      },
      lines: {},
    };
  },
});
