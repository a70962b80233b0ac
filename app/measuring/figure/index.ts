/**
 * Figures: toys drawn from their own proportions, and tapes laid on them, as data. No colours, no words, no page: the
 * part `app/parts/figure.tsx` draws what this room hands out.
 *
 * - `diagram(kind, traits, knowns, measure, frame = WIDE)`: a figure near enough to see where the tape goes, and the
 *   tape. Null where the kind has no such measure. `tape.view` is the side the toy is seen from.
 * - `compared(kind, traits, measure, [knowns, knowns], frame)`: the same toy by different numbers, to one scale.
 * - `figure(kind, traits, knowns, view, frame = WIDE)`: the whole toy from one side.
 *
 * - `portrait(kind, traits, knowns)`: a small square picture for lists of toys and for choosing a kind.
 * - `traitPicture(kind, trait, value)`: a small square picture of what a trait means.
 * - `marksOf[kind]`, `markPicture(kind, traits, knowns, now, frame = WIDE)`: step zero, with a glow under the marks `now`.
 * - `bareUpright`, `bareStage`, `stagePicture`, `stageSpots` and the shapes they are made of: for whoever draws something on a toy.
 * - `viewOf(kind, traits, measure)`: the side such a toy is turned to for a measure.
 *
 * `knowns` may be empty: the figure is then the typical toy. `SNUG` is for landscape, where the number stands beside it.
 */
export { type Bare, bareHead, bareStage, bareUpright, stagePicture, stageSpots, withParts } from './bare';
export { compared } from './compared';
export { diagram, figure } from './diagram';
export {
  type Diagram,
  type Drawn,
  type Figure,
  type Frame,
  type Label,
  type Layer,
  type Look,
  SNUG,
  type Strip,
  type Tape,
  WIDE,
} from './drawing';
export { headOutline, onHead } from './head/places';
export { viewOf } from './kinds';
export { across, along } from './outline';
export { markPicture, marksOf, portrait, SMALL, traitPicture } from './pictures';
export { station } from './shapes';
export { smoothPoints } from './smooth';
export { closed, type MarkId, open, type Part, type Stage } from './stage';
