import type { Mm } from '../../body';
import { isSimple, outlineOn, type PhotoFault, type SeenOutline, seePlane } from '../../measuring/photo';
import { CARD_MARKS, type Marks, mostMissed, nextWaiting, type Size, waitingMarks } from '../shared/photo/marks';
import { LEAST_MM, MOST_MM } from './widths';

/** After the card's corners two points of a thread, then the corners of the scrap. */
export const FIRST_EDGE = CARD_MARKS + 2;
export const LEAST_EDGES = 3;
export const MOST_EDGES = 12;

/** A thread seen shorter says too little of which way it runs: two taps that miss would turn it by 4° and more. */
const LEAST_THREAD_MM = 25;
const LEAST_THREAD_MISSES = 20;

const THREAD_WAITS_AT = [
  [0.5, 0.4],
  [0.5, 0.6],
] as const;
const EDGE_WAITS_AT = [[0.5, 0.5]] as const;

/** What the marks say: nothing yet, why they cannot be right, or the outline with its sides and its give. */
export type Verdict =
  | { readonly is: 'waiting'; readonly next: number }
  | { readonly is: 'wrong'; readonly code: PhotoFault | 'photo.thread-short' | 'photo.crossing' | 'photo.no-outline' }
  | { readonly is: 'seen'; readonly outline: SeenOutline };

export const newMarks = (size: Size): Marks => waitingMarks([...THREAD_WAITS_AT, ...EDGE_WAITS_AT], size);

/** The marks with one more waiting once the last corner is set, as long as there may be more. */
export function grown(marks: Marks, size: Size): Marks {
  const isFull = marks.length >= FIRST_EDGE + MOST_EDGES;
  return isFull || marks.at(-1)?.miss === null ? marks : [...marks, ...waitingMarks(EDGE_WAITS_AT, size).slice(-1)];
}

/** The marks without the last that was set, in their order. */
export function oneBack(marks: Marks, size: Size): Marks {
  const last = marks.findLastIndex(({ miss }) => miss !== null);
  if (last >= FIRST_EDGE) return grown(marks.slice(0, last), size);
  return marks.map((mark, at) => (at === last ? { ...mark, miss: null } : mark));
}

/** Reads the outline off the marks. */
export function verdictOf(marks: Marks, size: Size): Verdict {
  const waiting = nextWaiting(marks);
  if (waiting !== null && waiting < CARD_MARKS) return { is: 'waiting', next: waiting };
  const tap = mostMissed(marks);
  const spots = marks.map(({ spot }) => spot);
  const plane = seePlane(spots.slice(0, CARD_MARKS), size, tap);
  if (!plane.ok) return { is: 'wrong', code: plane.code };
  if (waiting !== null && waiting < FIRST_EDGE) return { is: 'waiting', next: waiting };
  const [from, to] = spots.slice(CARD_MARKS);
  if (!from || !to || Math.hypot(to.x - from.x, to.y - from.y) < LEAST_THREAD_MISSES * tap)
    return { is: 'wrong', code: 'photo.thread-short' };
  if (waiting !== null && waiting < FIRST_EDGE + LEAST_EDGES) return { is: 'waiting', next: waiting };
  const edges = spots.slice(FIRST_EDGE, waiting ?? undefined);
  if (!isSimple(edges)) return { is: 'wrong', code: 'photo.crossing' };
  const outline = outlineOn(plane, edges, [from, to]);
  if (!outline || !isScrap(outline)) return { is: 'wrong', code: 'photo.no-outline' };
  if (outline.thread < LEAST_THREAD_MM) return { is: 'wrong', code: 'photo.thread-short' };
  return { is: 'seen', outline };
}

/** How long an outline is with the grain, and how wide across it, mm. */
export const sidesOf = ({ corners }: SeenOutline): { readonly long: Mm; readonly wide: Mm } => ({
  long: Math.max(...corners.map(({ x }) => x)),
  wide: Math.max(...corners.map(({ y }) => y)),
});

function isScrap(outline: SeenOutline): boolean {
  const { long, wide } = sidesOf(outline);
  return Math.min(long, wide) >= LEAST_MM && Math.max(long, wide) <= MOST_MM && outline.give < Math.min(long, wide) / 2;
}
