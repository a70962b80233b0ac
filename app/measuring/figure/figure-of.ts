import type { View } from '../../body';
import type { Point } from '../../body/point';
import type { Seen } from './camera';
import type { Drawn, Figure, Frame } from './drawing';
import { drawMarks } from './marks';
import { smoothPath } from './smooth';
import type { MarkId, Part, Stage } from './stage';

type Told = {
  /** Parts that stand between the viewer and the tape, by how their names begin. */
  readonly over?: readonly string[] | undefined;
  /** Marks that are spoken of now; with `null` none are drawn at all. */
  readonly now?: readonly MarkId[] | null;
};

/** A stage in frame units as drawn shapes. */
export function figureOf(stage: Seen, view: View, frame: Frame, { over = [], now = [] }: Told = {}): Figure {
  const shapes = stage.parts.flatMap((part): Drawn[] => {
    const layer = over.some((name) => part.name.startsWith(name)) ? 'over' : 'toy';
    return part.look === 'unseen' ? [] : [{ layer, look: part.look, path: smoothPath(part.points, part.closed) }];
  });
  return { frame, view, shapes: now ? [...shapes, ...drawMarks(stage, now)] : shapes };
}

/** Every point of the parts that are drawn. */
export const wholeOf = (stage: Stage): Point[] => stage.parts.filter(isSeen).flatMap(({ points }) => points);

const isSeen = ({ look }: Part) => look !== 'unseen';
