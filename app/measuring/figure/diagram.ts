import { type BodyKind, findMeasure, type Knowns, type MeasureId, type Traits, type View } from '../../body';
import type { Point } from '../../body/point';
import { type Seen, seen } from './camera';
import { type Diagram, type Figure, type Frame, type Tape, WIDE } from './drawing';
import { figureOf, wholeOf } from './figure-of';
import { findTape, sheets } from './kinds';
import { type Lay, passedBy, type TapeRow } from './lay';
import { layTape } from './lay-tape';
import type { Stage } from './stage';
import { tapeOf } from './tape-of';

/** In toy units. */
const RULER_ROOM = 9;

/** A toy from one side, whole, with the threads and bits of tape of step zero. */
export function figure(kind: BodyKind, traits: Traits, knowns: Knowns, view: View, frame: Frame = WIDE): Figure {
  const stage = sheets[kind][view].stage(traits, knowns);
  return figureOf(seen(stage, wholeOf(stage), frame, false), view, frame);
}

/** The figure and the tape for one measure; null when the kind has no such measure. */
export function diagram(
  kind: BodyKind,
  traits: Traits,
  knowns: Knowns,
  measure: MeasureId,
  frame: Frame = WIDE,
): Diagram | null {
  const found = findTape(kind, traits, measure);
  const nature = findMeasure(measure)?.nature;
  if (!found || !nature) return null;
  const { view, row } = found;
  const stage = sheets[kind][view].stage(having(traits, row.needs), knowns, row.pose);
  const needed = row.shot === 'whole' ? wholeOf(stage) : (stage.shots[row.shot] ?? wholeOf(stage));
  const close = seen(stage, [...needed, ...roomFor(row.way, stage)], frame, true);
  return taped(close, found, { measure, nature }, frame);
}

/** A toy before the camera with the measure's tape laid on it. */
export function taped(
  close: Seen,
  { view, row }: NonNullable<ReturnType<typeof findTape>>,
  { measure, nature }: Pick<Tape, 'measure' | 'nature'>,
  frame: Frame,
): Diagram {
  const laid = layTape(row.way, close, nature);
  const drawn = tapeOf(laid, close, row, { nature, frame });
  const tape: Tape = { measure, nature, view, ...drawn, text: row.text ?? measure };
  return { figure: figureOf(close, view, frame, { over: row.over }), tape };
}

/** What the picture must show of the tape, whatever else: a ruler is broad, and goes on past its end. */
export function roomFor(way: Lay<string>, stage: Stage): Point[] {
  const passed = passedBy(way).flatMap((name) => stage.places[name] ?? []);
  if (way.lay !== 'ruler') return passed;
  return passed.flatMap(({ x, y }) => [
    { x: x - RULER_ROOM, y: y - RULER_ROOM },
    { x: x + RULER_ROOM, y: y + RULER_ROOM },
  ]);
}

/** The toy as the measure needs it: with ears where they are measured; laid down or put on its feet for its whole height. */
export function having(traits: Traits, needs: TapeRow<string, string>['needs']): Traits {
  if (needs === 'ears' && traits.ears === 'none') return { ...traits, ears: 'side' };
  if (needs === 'tail') return { ...traits, tail: true };
  if (needs === 'standing') return { ...traits, posture: 'stands' };
  return needs === 'seat' ? { ...traits, posture: 'sits' } : traits;
}
