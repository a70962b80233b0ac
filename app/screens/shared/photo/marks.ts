import { USUAL_TAP_PX } from '../../../measuring/photo';

/** A point of the picture, px from its upper left: x right, y down. */
export type Spot = { readonly x: number; readonly y: number };
export type Size = { readonly width: number; readonly height: number };

/** One mark on the picture. `miss`: how far it may be off, px; null while it waits to be set. */
export type Mark = { readonly spot: Spot; readonly miss: number | null };
export type Marks = readonly Mark[];

/** What a mark is of: those of a group are drawn alike; what is written beside it, and its name. */
export type Sort = {
  readonly group: 'corner' | 'end' | 'thread' | 'edge';
  readonly tag: string;
  readonly name: string;
};

/** The four corners of the card come first, in order round it. */
export const CARD_MARKS = 4;

/** Where the card's marks wait, as shares of the picture: for those who bring them to their places by keys. */
const CARD_WAITS_AT = [
  [0.3, 0.35],
  [0.7, 0.35],
  [0.7, 0.65],
  [0.3, 0.65],
] as const;

/** Marks that wait: the card's, then others where they are said to, as shares of the picture. */
export function waitingMarks(others: readonly (readonly [number, number])[], { width, height }: Size): Marks {
  return [...CARD_WAITS_AT, ...others].map(([x, y]) => ({
    spot: { x: Math.round(x * width), y: Math.round(y * height) },
    miss: null,
  }));
}

/** The marks with one of them at `spot`, kept inside the picture; set looking through the loupe unless told otherwise. */
export function setMark(marks: Marks, which: number, spot: Spot, size: Size, miss = USUAL_TAP_PX): Marks {
  const inside = { x: within(spot.x, size.width), y: within(spot.y, size.height) };
  return marks.map((mark, at) => (at === which ? { spot: inside, miss } : mark));
}

/** Which mark is to be set next; null once all are. */
export function nextWaiting(marks: Marks): number | null {
  const at = marks.findIndex(({ miss }) => miss === null);
  return at < 0 ? null : at;
}

/** Whether a mark was only tapped, not yet brought to its place by the loupe. */
export const isCoarse = (marks: Marks): boolean => marks.some(({ miss }) => miss !== null && miss > USUAL_TAP_PX);

/** The least certain mark speaks for all, px. */
export const mostMissed = (marks: Marks): number => Math.max(...marks.map(({ miss }) => miss ?? 0));

/** The mark that is set nearest to a spot, where it is no farther than `reach`, px. */
export function markNear(marks: Marks, { x, y }: Spot, reach: number): number | null {
  const far = marks.map(({ spot, miss }) => (miss === null ? Infinity : Math.hypot(spot.x - x, spot.y - y)));
  const nearest = Math.min(...far);
  return nearest <= reach ? far.indexOf(nearest) : null;
}

/** Which way from a mark there is least to hide, of length 1: out of the card, or on beyond the measured length. */
export function awayFrom(marks: Marks, sorts: readonly Sort[], which: number): Spot {
  const mark = marks[which];
  const group = marks.filter(({ miss }, at) => miss !== null && sorts[at]?.group === sorts[which]?.group);
  const middle = (along: 'x' | 'y') =>
    group.reduce((sum, { spot }) => sum + spot[along], 0) / Math.max(1, group.length);
  const [x, y] = mark ? [mark.spot.x - middle('x'), mark.spot.y - middle('y')] : [0, 0];
  const far = Math.hypot(x, y);
  return mark?.miss == null || far < 1 ? { x: -Math.SQRT1_2, y: -Math.SQRT1_2 } : { x: x / far, y: y / far };
}

const within = (place: number, most: number) => Math.min(Math.max(place, 0), most);
