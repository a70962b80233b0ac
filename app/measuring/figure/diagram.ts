import { type BodyKind, findMeasure, type Knowns, type MeasureId, type Traits, type View } from '../../body';
import { bandRound, middleOf } from './band';
import { seen } from './camera';
import { crowdOf } from './crowd';
import { type Diagram, type Figure, type Frame, type Tape, WIDE } from './drawing';
import { figureOf, wholeOf } from './figure-of';
import { findTape, sheets } from './kinds';
import { placeLabels } from './labels';
import type { Guide, TapeRow } from './lay';
import { type Laid, layTape, outlineOf } from './lay-tape';
import { minus, moved, type Point, turned, unit } from './point';
import { smoothPath, smoothPoints, straightPath } from './smooth';
import type { Stage } from './stage';
import { lengthOf } from './strip';

/** The marks at a tape's ends, and how they shrink on a short one. */
const DOT = 6;
const ARROW = { long: 13, half: 7 };
const ROOM_FOR_MARKS = 55;
const SMALLEST_MARK = 0.66;

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
  const found = findTape(kind, measure);
  const nature = findMeasure(measure)?.nature;
  if (!found || !nature) return null;
  const { view, row } = found;
  const stage = sheets[kind][view].stage(having(traits, row.needs), knowns, row.pose);
  const needed = row.shot === 'whole' ? wholeOf(stage) : (stage.shots[row.shot] ?? wholeOf(stage));
  const close = seen(stage, needed, frame, true);
  const laid = layTape(row.way, close, nature);
  const tape: Tape = { measure, nature, view, ...tapeOf(laid, close, row, frame), text: row.text ?? measure };
  return { figure: figureOf(close, view, frame, { over: row.over }), tape };
}

function tapeOf(laid: Laid, stage: Stage, row: TapeRow<string, string, string>, frame: Frame) {
  const { way, ring } = laid;
  const start = way[0] ?? { x: 0, y: 0 };
  const last = way.at(-1) ?? start;
  const ahead = unit(minus(last, way.at(-2) ?? start));
  const shown = Math.min(...laid.visible.map(({ points }) => lengthOf(points)));
  const size = Math.min(Math.max(shown / ROOM_FOR_MARKS, SMALLEST_MARK), 1);
  const end = ring ? moved(start, ahead, -DOT * size - 1) : last;
  const taken = [...way.filter((here) => inFrame(here, frame)), start, end];
  const furs = stage.parts.filter(({ closed, look }) => closed && look.startsWith('fur'));
  const crowd = crowdOf(
    frame,
    furs.map(({ points }) => smoothPoints(points, true)),
  );
  const wanted = ring
    ? ([{ word: 'meet', mark: start }] as const)
    : ([
        { word: 'start', mark: start },
        { word: 'end', mark: moved(end, ahead, -5) },
      ] as const);
  return {
    ring,
    visible: laid.visible,
    hidden: laid.hidden,
    guides: (row.guides ?? []).map((guide) => smoothPath(guideLine(guide, stage), false)),
    start,
    end,
    arrival: Math.atan2(ahead.y, ahead.x),
    dot: DOT * size,
    arrow: arrowPath(end, ahead, size),
    way: smoothPath(way, false),
    labels: placeLabels(frame, wanted, taken, crowd),
  };
}

function guideLine(guide: Guide<string>, stage: Stage): Point[] {
  const place = (name: string): Point => stage.places[name] ?? { x: 0, y: 0 };
  if (!('of' in guide)) return guide.map(place);
  return middleOf(bandRound(outlineOf(stage, guide.of), place(guide.at), place(guide.toward), 1).near);
}

function arrowPath(tip: Point, ahead: Point, size: number): string {
  const back = moved(tip, ahead, -ARROW.long * size);
  const aside = turned(ahead);
  return straightPath([tip, moved(back, aside, ARROW.half * size), moved(back, aside, -ARROW.half * size)], true);
}

const inFrame = ({ x, y }: Point, { width, height }: Frame) => x >= 0 && y >= 0 && x <= width && y <= height;

/** The toy as the measure needs it: nobody measures the ears of a toy without. */
function having(traits: Traits, needs: TapeRow<string, string>['needs']): Traits {
  if (needs === 'ears' && traits.ears === 'none') return { ...traits, ears: 'side' };
  if (needs === 'tail') return { ...traits, tail: true };
  return needs === 'seat' ? { ...traits, posture: 'sits' } : traits;
}
