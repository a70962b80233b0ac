import type { Point } from '../../body/point';
import type { Look } from './drawing';

/**
 * One shape of a toy before the camera: a smooth curve through its points. `name` lets a tape lie on it; an unseen part
 * is only for tapes.
 */
export type Part = {
  readonly name: string;
  readonly look: Look | 'unseen';
  readonly points: readonly Point[];
  readonly closed: boolean;
};

/** What a maker puts on the toy before she measures: a thread round it, a bit of tape on it, a line down its side. */
export type Mark = { readonly id: MarkId } & Laid;

/** Each thing the maker puts on, by where it goes; those at both sides are one. */
export type MarkId =
  | 'neck'
  | 'face'
  | 'fullest'
  | 'waist'
  | 'shoulders'
  | 'underarms'
  | 'legs'
  | 'sides'
  | 'hem'
  | 'hood';

type Laid =
  | { readonly mark: 'thread'; readonly of: string; readonly at: Point; readonly toward: Point; readonly bow: boolean }
  | { readonly mark: 'patch'; readonly at: Point; readonly toward: Point }
  | { readonly mark: 'side-line'; readonly from: Point; readonly to: Point };

/**
 * A toy seen from one side, in its own units: y down from the high shoulder point, x right from the middle. Parts in
 * drawing order; places that tapes speak of; shots, each the points a picture close to one region must show.
 */
export type Stage<Place extends string = string, Shot extends string = string> = {
  readonly parts: readonly Part[];
  readonly places: { readonly [P in Place]: Point };
  readonly shots: { readonly [S in Shot]: readonly Point[] };
  readonly marks: readonly Mark[];
};

export const closed = (name: string, look: Part['look'], points: readonly Point[]): Part => ({
  name,
  look,
  points,
  closed: true,
});

export const open = (name: string, look: Part['look'], points: readonly Point[]): Part => ({
  name,
  look,
  points,
  closed: false,
});
