import { flatten, line, type Path, type Point, point } from '../geometry';
import type { Fed } from './block';
import { heightAt } from './height';

/** Sizes a front has a dart by: what it takes in level with the underarm, and how far it reaches up and down from there, mm. */
export const dartSizes = ['dartWidth', 'dartUp', 'dartDown'] as const;
/** Its two lines, which are sewn to each other, and its middle, along which it is folded. */
export const dartLines = ['dart-near', 'dart-far', 'dart-fold'] as const;
type Lines = Partial<Record<(typeof dartLines)[number], Path>>;

/** Where it stands on a half front, as shares of that, the best first (common practice, no source). */
const PLACES = [0.55, 0.6, 0.5, 0.65, 0.45, 0.7, 0.4] as const;
/** Its points keep clear of seams, its lines of a pocket's sewn edges, mm. */
const CLEAR_MM = 10;
const BESIDE_MM = 4;
/** Under a pocket it ends at the pocket's open edge, but is never cut to less than this share of its lower leg. */
const LEAST_LEG = 0.6;
/** However little room there is, it reaches so far to either side of the underarm, mm. */
const LEAST_REACH_MM = 4;

/** What a dart keeps clear of: the edge above it from the centre out, the underarm it is widest at, the hem and a pocket. */
export type DartGround = {
  readonly above: Path;
  readonly underarm: Point;
  readonly hem: Path;
  readonly pocket: Pocketed | null;
};

/** A pocket on the same front: how far out its top reaches, and where the open edge ends that a dart runs out under, if one does. */
export type Pocketed = { readonly out: number; readonly ends: number | null };

/** A dart with two points, upright, on a half front. */
export function dartIn(
  { dartWidth, dartUp, dartDown }: Fed<never, (typeof dartSizes)[number]>,
  ground: DartGround,
): Lines {
  if (dartWidth === null || dartUp === null || dartDown === null) return {};
  const { above, underarm, hem, pocket } = ground;
  const half = dartWidth / 2;
  const from = pocket ? pocket.out + half + BESIDE_MM : 0;
  const places = PLACES.map((share) => Math.max(share * underarm.x, from));
  const roof = (x: number) => Math.max(...[x - half, x, x + half].map((at) => lowestOver(above, at)));
  const highest = (x: number) => Math.max(underarm.y - dartUp, roof(x) + CLEAR_MM);
  const x = places.reduce((best, each) => (highest(each) < highest(best) ? each : best));
  const floor = heightAt(hem, x) - BESIDE_MM;
  // Where an armhole is scooped out as deep as its underarm, the dart is widest below it.
  const level = Math.min(Math.max(underarm.y, highest(x) + LEAST_REACH_MM), floor - LEAST_REACH_MM);
  const top = point(x, Math.min(highest(x), level - LEAST_REACH_MM));
  const open = pocket?.ends ? pocket.ends - level : dartDown;
  const down = Math.min(dartDown, Math.max(open, dartDown * LEAST_LEG));
  const low = Math.min(level + Math.max(down, LEAST_REACH_MM), floor);
  const foot = point(x, Math.max(low, level + LEAST_REACH_MM / 2));
  const leg = (side: -1 | 1): Path => {
    const widest = point(x + side * half, level);
    return [line(top, widest), line(widest, foot)];
  };
  return { 'dart-near': leg(-1), 'dart-far': leg(1), 'dart-fold': [line(top, foot)] };
}

const FLAT_MM = 0.5;

/** The lowest place of an edge at x: an armhole scooped in lies under its own shoulder. */
function lowestOver(above: Path, x: number): number {
  const points = flatten(above, FLAT_MM);
  const crossings = points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? to;
    return from.x <= x === to.x <= x ? [] : [from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x)];
  });
  return Math.max(heightAt(above, x), ...crossings);
}
