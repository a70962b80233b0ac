import { flatten, line, type Path, type Point, point } from '../geometry';
import type { Fed } from './block';
import { heightAt } from './height';

/** Sizes half a bodice has darts by: how many, what each takes in level with the underarm, and how far it reaches up and down from there, mm. */
export const dartSizes = ['dartCount', 'dartWidth', 'dartUp', 'dartDown'] as const;
/** Of each its two lines, which are sewn to each other, and its middle, along which it is folded. */
export const dartLines = [
  'dart-near',
  'dart-far',
  'dart-fold',
  'outer-dart-near',
  'outer-dart-far',
  'outer-dart-fold',
] as const;
type Lines = Partial<Record<(typeof dartLines)[number], Path>>;

/** Where one stands on half a bodice, as shares of that, the best first, and where two do (common practice, no source). */
const PLACES = [0.55, 0.6, 0.5, 0.65, 0.45, 0.7, 0.4].map((share) => [share]);
const PAIRS = [
  [0.4, 0.68],
  // Where neither has room there above it, as beside a raglan sleeve: any two that are clear of each other.
  ...[0.3, 0.34, 0.38, 0.42, 0.46, 0.5].flatMap((inner) => [0, 0.1, 0.2, 0.3].map((apart) => [inner, inner + apart])),
];
/** Its points keep clear of seams, its lines of a pocket's sewn edges and of each other, mm. */
const CLEAR_MM = 10;
const BESIDE_MM = 4;
/** Under a pocket it ends at the pocket's open edge, but is never cut to less than this share of its lower leg. */
const LEAST_LEG = 0.6;
/** However little room there is, it reaches so far to either side of the underarm, mm. */
const LEAST_REACH_MM = 4;
/** How closely the edge above is followed, mm. */
const FLAT_MM = 0.2;

/** What a dart keeps clear of: the edge above it from the centre out, the underarm it is widest at, the hem and a pocket. */
export type DartGround = {
  readonly above: Path;
  readonly underarm: Point;
  readonly hem: Path;
  readonly pocket: Pocketed | null;
};

/** A pocket on the same front: how far out its top reaches, and where the open edge ends that a dart runs out under, if one does. */
export type Pocketed = { readonly out: number; readonly ends: number | null };

/** Darts with two points, upright, on half a bodice. */
export function dartIn(
  { dartCount, dartWidth, dartUp, dartDown }: Fed<never, (typeof dartSizes)[number]>,
  ground: DartGround,
): Lines {
  if (dartCount === null || dartWidth === null || dartUp === null || dartDown === null) return {};
  const dart = { width: dartWidth, up: dartUp, down: dartDown };
  const over = flatten(ground.above, FLAT_MM);
  const roof = (x: number) => highest(x, dart, over, ground.underarm);
  const places = (dartCount > 1 ? PAIRS : PLACES).map((shares) => spaced(shares, dart.width, ground));
  const worst = (at: readonly number[]) => Math.max(...at.map(roof));
  const [inner, outer] = places.reduce((best, each) => (worst(each) < worst(best) ? each : best));
  const one = dartAt(inner ?? 0, roof(inner ?? 0), dart, ground);
  const other = outer === undefined ? undefined : dartAt(outer, roof(outer), dart, ground);
  return {
    'dart-near': one.near,
    'dart-far': one.far,
    'dart-fold': one.fold,
    ...(other && { 'outer-dart-near': other.near, 'outer-dart-far': other.far, 'outer-dart-fold': other.fold }),
  };
}

type Upright = {
  readonly width: number;
  readonly up: number;
  readonly down: number;
};

/** Where they stand: clear of a pocket and of each other, and never past the underarm. */
function spaced(shares: readonly number[], width: number, { underarm, pocket }: DartGround): readonly number[] {
  const apart = width + BESIDE_MM;
  const from = pocket ? pocket.out + width / 2 + BESIDE_MM : 0;
  const places: number[] = [];
  for (const share of shares) places.push(Math.max(share * underarm.x, from, (places.at(-1) ?? -apart) + apart));
  const past = Math.max((places.at(-1) ?? 0) + width / 2 + BESIDE_MM - underarm.x, 0);
  return shares.length > 1 ? places.map((x) => x - past) : places;
}

/** The highest its upper point may lie, below an edge given as points. */
function highest(x: number, { width, up }: Upright, over: readonly Point[], underarm: Point): number {
  const roof = Math.max(...[x - width / 2, x, x + width / 2].map((at) => lowestAt(over, at)));
  return Math.max(underarm.y - up, roof + CLEAR_MM);
}

function dartAt(x: number, high: number, dart: Upright, ground: DartGround): Record<'near' | 'far' | 'fold', Path> {
  const { underarm, hem, pocket } = ground;
  const floor = heightAt(hem, x) - BESIDE_MM;
  // Where an armhole is scooped out as deep as its underarm, the dart is widest below it.
  const level = Math.min(Math.max(underarm.y, high + LEAST_REACH_MM), floor - LEAST_REACH_MM);
  const top = point(x, Math.min(high, level - LEAST_REACH_MM));
  const open = pocket?.ends ? pocket.ends - level : dart.down;
  const down = Math.min(dart.down, Math.max(open, dart.down * LEAST_LEG));
  const low = Math.min(level + Math.max(down, LEAST_REACH_MM), floor);
  const foot = point(x, Math.max(low, level + LEAST_REACH_MM / 2));
  const leg = (side: -1 | 1): Path => {
    const widest = point(x + (side * dart.width) / 2, level);
    return [line(top, widest), line(widest, foot)];
  };
  return { near: leg(-1), far: leg(1), fold: [line(top, foot)] };
}

/** The lowest place of an edge at x, its last where it does not come so far: an armhole scooped in lies under its own shoulder. */
function lowestAt(points: readonly Point[], x: number): number {
  let lowest = -Infinity;
  let from = points[0];
  for (const to of points) {
    if (from && from.x <= x !== to.x <= x) {
      lowest = Math.max(lowest, from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x));
    }
    from = to;
  }
  return lowest === -Infinity ? (from?.y ?? 0) : lowest;
}
