import type { Say } from '../../body';
import type { InnerLine, Piece } from '../draft-types';
import { distance, end, type Point, start } from '../geometry';
import { straight } from '../sheets/marks';

/** What words along a straight stretch say, and which shape's line that is: of one shape every name is said once. */
export type Wording = { readonly text: string; readonly ends: readonly [Point, Point]; readonly shape: number };

/** Lines whose ends are this near are one shape: rounding only, mm. */
const JOINED_MM = 0.01;
/** What numbers lines of one kind: `fold-3`. */
const NUMBER = /-\d+$/;

/** What a line inside a piece is called. */
export const lineText = (name: string, say: Say): string => say(`line.${name.replace(NUMBER, '')}`);

/** What each straight line inside a piece is called. */
export function lineWordings({ lines }: Pick<Piece, 'lines'>, say: Say): readonly Wording[] {
  const shapes = shapesOf(lines);
  return lines.flatMap(({ name, path }, index) =>
    straight(path).map((ends) => ({ text: lineText(name, say), ends, shape: shapes[index] ?? index })),
  );
}

/** For each line the number of the shape it belongs to, end to end with others: the least of their places. */
function shapesOf(lines: readonly InnerLine[]): readonly number[] {
  const shapes = lines.map((_, index) => index);
  for (const [one, line] of lines.entries())
    for (const [other, before] of lines.slice(0, one).entries()) {
      if (!meet(line, before)) continue;
      const [low, high] = [shapes[one] ?? one, shapes[other] ?? other].sort((a, b) => a - b);
      for (const [index, shape] of shapes.entries()) if (shape === high) shapes[index] = low ?? shape;
    }
  return shapes;
}

function meet({ path: one }: InnerLine, { path: other }: InnerLine): boolean {
  const ends = [start(other), end(other)];
  return [start(one), end(one)].some((p) => ends.some((q) => distance(p, q) < JOINED_MM));
}
