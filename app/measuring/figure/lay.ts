import type { Traits } from '../../body';

/**
 * How a tape is laid on a stage, as data: names of places and parts, no numbers of its own.
 *
 * - `round`: once round a part, square to the way from `at` to `toward`; the far half is hidden.
 * - `across`: the near half of the same, from edge to edge.
 * - `over`: over the surface through places in order; `behind` goes on out of sight, `again` comes back into it.
 * - `edge`: along a part's edge, just inside it, past `by`.
 * - `ruler`: straight, with the ruler lying on one side of the line; one that stands has its end on the table at `to`.
 */
export type Lay<Place extends string> =
  | { readonly lay: 'round' | 'across'; readonly of: string; readonly at: Place; readonly toward: Place }
  | {
      readonly lay: 'over';
      readonly through: readonly Place[];
      readonly behind?: readonly Place[];
      readonly again?: readonly Place[];
    }
  | { readonly lay: 'edge'; readonly of: string; readonly from: Place; readonly to: Place; readonly by: Place }
  | {
      readonly lay: 'ruler';
      readonly from: Place;
      readonly to: Place;
      readonly side: 1 | -1;
      readonly stands?: true;
    };

/** A level line, plumb line or edge through places in order; or a level line round a part, its near half. */
export type Guide<Place extends string> =
  | readonly Place[]
  | { readonly of: string; readonly at: Place; readonly toward: Place };

/** A measure's row: how its tape is laid, what the picture must show, and the pencil lines that help. */
export type TapeRow<Place extends string, Shot extends string, Pose extends string = never> = {
  readonly way: Lay<Place>;
  readonly shot: Shot | 'whole';
  readonly guides?: readonly Guide<Place>[];
  readonly pose?: Pose;
  /** Parts that stand between the viewer and the tape, by how their names begin. */
  readonly over?: readonly string[];
  /** What the toy must have or do for this measure, whatever its traits. */
  readonly needs?: 'ears' | 'tail' | 'seat' | 'standing';
  /** Taken so only on a toy that sits, or one that stands: another side has the row for the other. */
  readonly only?: Traits['posture'];
  /** A pencil line that has to be named, and where on it. */
  readonly named?: { readonly word: 'side-line'; readonly at: Place };
  /** Its text equivalent, where it is not the measure's own. */
  readonly text?: string;
};

/** The places a tape passes: what its picture must show, whatever else. */
export function passedBy<Place extends string>(way: Lay<Place>): readonly Place[] {
  switch (way.lay) {
    case 'round':
    case 'across':
      return [way.at];
    case 'over':
      return [...way.through, ...(way.behind ?? []), ...(way.again ?? [])];
    case 'edge':
      return [way.from, way.by, way.to];
    case 'ruler':
      return [way.from, way.to];
  }
}
