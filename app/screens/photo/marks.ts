import type { Known } from '../../body';
import { distanceOn, type PhotoFault, seePlane, USUAL_TAP_PX } from '../../measuring/photo';

/** A point of the picture, px from its upper left: x right, y down. */
export type Spot = { readonly x: number; readonly y: number };
export type Size = { readonly width: number; readonly height: number };

/** One mark on the picture. `miss`: how far it may be off, px; null while it waits to be set. */
export type Mark = { readonly spot: Spot; readonly miss: number | null };

/** Four corners of the card, in order round it, then the two ends of what is measured. */
export type Marks = readonly [Mark, Mark, Mark, Mark, Mark, Mark];
export type MarkIndex = 0 | 1 | 2 | 3 | 4 | 5;
export const MARKS = [0, 1, 2, 3, 4, 5] as const;

/** What the marks say: nothing yet, why they cannot be right, or the distance. */
export type Verdict =
  | { readonly is: 'waiting'; readonly next: MarkIndex }
  | { readonly is: 'wrong'; readonly code: PhotoFault | 'photo.no-distance' }
  | { readonly is: 'seen'; readonly known: Known };

/** Where marks wait, as shares of the picture: for those who bring them to their places by keys. */
const WAITING_AT = [
  [0.3, 0.35],
  [0.7, 0.35],
  [0.7, 0.65],
  [0.3, 0.65],
  [0.4, 0.5],
  [0.6, 0.5],
] as const;

export function waitingMarks({ width, height }: Size): Marks {
  const at = ([x, y]: readonly [number, number]): Mark => ({
    spot: { x: Math.round(x * width), y: Math.round(y * height) },
    miss: null,
  });
  const [a, b, c, d, e, f] = WAITING_AT;
  return [at(a), at(b), at(c), at(d), at(e), at(f)];
}

/** The marks with one of them at `spot`, kept inside the picture; set looking through the loupe unless told otherwise. */
export function setMark(marks: Marks, which: MarkIndex, spot: Spot, size: Size, miss = USUAL_TAP_PX): Marks {
  const inside = { x: within(spot.x, size.width), y: within(spot.y, size.height) };
  const [a, b, c, d, e, f] = marks.map((mark, at) => (at === which ? { spot: inside, miss } : mark));
  return [a ?? marks[0], b ?? marks[1], c ?? marks[2], d ?? marks[3], e ?? marks[4], f ?? marks[5]];
}

export const nextWaiting = (marks: Marks): MarkIndex | null => MARKS.find((at) => marks[at].miss === null) ?? null;

/** Whether a mark was only tapped, not yet brought to its place by the loupe. */
export const isCoarse = (marks: Marks): boolean => marks.some(({ miss }) => miss !== null && miss > USUAL_TAP_PX);

/** The mark that is set nearest to a spot, where it is no farther than `reach`, px. */
export function markNear(marks: Marks, { x, y }: Spot, reach: number): MarkIndex | null {
  const far = (at: MarkIndex) => Math.hypot(marks[at].spot.x - x, marks[at].spot.y - y);
  const [nearest] = MARKS.filter((at) => marks[at].miss !== null && far(at) <= reach).sort((a, b) => far(a) - far(b));
  return nearest ?? null;
}

/** Which way from a mark there is least to hide, of length 1: out of the card, or on beyond the measured length. */
export function awayFrom(marks: Marks, which: MarkIndex): Spot {
  const group = MARKS.filter((at) => at < 4 === which < 4 && marks[at].miss !== null).map((at) => marks[at].spot);
  const middle = (along: 'x' | 'y') => group.reduce((sum, spot) => sum + spot[along], 0) / Math.max(1, group.length);
  const { spot, miss } = marks[which];
  const [x, y] = [spot.x - middle('x'), spot.y - middle('y')];
  const far = Math.hypot(x, y);
  return miss === null || far < 1 ? { x: -Math.SQRT1_2, y: -Math.SQRT1_2 } : { x: x / far, y: y / far };
}

/** Reads the distance off the marks. The least certain mark speaks for all. */
export function verdictOf(marks: Marks, size: Size): Verdict {
  const [a, b, c, d, one, other] = marks;
  const waiting = nextWaiting(marks);
  if (waiting !== null && waiting < 4) return { is: 'waiting', next: waiting };
  const miss = Math.max(...marks.map((mark) => mark.miss ?? 0));
  const plane = seePlane([a.spot, b.spot, c.spot, d.spot], size, miss);
  if (!plane.ok) return { is: 'wrong', code: plane.code };
  if (waiting !== null) return { is: 'waiting', next: waiting };
  const known = distanceOn(plane, one.spot, other.spot);
  return known && isLength(known) ? { is: 'seen', known } : { is: 'wrong', code: 'photo.no-distance' };
}

/** What the store takes for a length, mm; a give as large as the length says nothing. */
const isLength = ({ value, give }: Known) => value >= 1 && value <= 3000 && give < value;

const within = (place: number, most: number) => Math.min(Math.max(place, 0), most);
