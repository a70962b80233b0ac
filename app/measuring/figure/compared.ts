import { type BodyKind, findMeasure, type Knowns, type MeasureId, type Traits } from '../../body';
import { type Point, point } from '../../body/point';
import { seen } from './camera';
import { having, roomFor, taped } from './diagram';
import { type Diagram, type Frame, WIDE } from './drawing';
import { wholeOf } from './figure-of';
import { findTape, sheets } from './kinds';
import type { Stage } from './stage';
import { bounded } from './stretch';

/**
 * One toy by several sets of numbers, whole, to one scale and level with each other, so that only what the numbers say
 * differs: a doubted number beside the likely one. The measure's tape lies on each. Empty where the kind has no such measure.
 */
export function compared(
  kind: BodyKind,
  traits: Traits,
  measure: MeasureId,
  numbers: readonly Knowns[],
  frame: Frame = WIDE,
): readonly Diagram[] {
  const found = findTape(kind, traits, measure);
  const nature = findMeasure(measure)?.nature;
  if (!found || !nature) return [];
  const { view, row } = found;
  const stages = numbers.map((knowns) => {
    const stage = sheets[kind][view].stage(having(traits, row.needs), knowns, row.pose);
    return measure === 'height' ? drawnOut(stage, tallness(numbers.at(-1), knowns)) : stage;
  });
  const needed = stages.flatMap((stage) => [...wholeOf(stage), ...roomFor(row.way, stage)]);
  return stages.map((stage) => taped(seen(stage, needed, frame, false), found, { measure, nature }, frame));
}

/** How much taller one set of numbers makes the toy than another does. */
const tallness = (usual: Knowns | undefined, { height }: Knowns): number =>
  usual?.height && height ? bounded(Math.log(height.value / usual.height.value)) : 1;

/** The same girths on a toy of another height. */
function drawnOut(stage: Stage, by: number): Stage {
  const out = ({ x, y }: Point) => point(x, y * by);
  return {
    ...stage,
    parts: stage.parts.map((part) => ({ ...part, points: part.points.map(out) })),
    places: Object.fromEntries(Object.entries(stage.places).map(([name, place]) => [name, out(place)])),
  };
}
