/**
 * Figures: toys drawn from their own proportions, and tapes laid on them, as data. No colours, no words, no page: the
 * part `app/parts/figure.tsx` draws what this room hands out.
 *
 * - `diagram(kind, traits, knowns, measure, frame = WIDE)`: a figure near enough to see where the tape goes, and the
 *   tape. Null where the kind has no such measure. `tape.view` is the side the toy is seen from.
 * - `figure(kind, traits, knowns, view, frame = WIDE)`: the whole toy from one side.
 *
 * `knowns` may be empty: the figure is then the typical toy. `TALL` is for landscape, beside the number.
 */
export { diagram, figure } from './diagram';
export {
  type Diagram,
  type Drawn,
  type Figure,
  type Frame,
  type Label,
  type Layer,
  type Look,
  type Strip,
  TALL,
  type Tape,
  WIDE,
} from './drawing';
