import { along, inset } from './outline';
import { type Point, point } from './point';
import { smoothPoints } from './smooth';
import { closed, type Part } from './stage';

/** About half the ink line, in toy units: the shade stays inside it. */
const LINE = 1.2;

/** A crescent inside the right-hand edge of an outline, from one place on it to another: the side away from the light. */
export function shadeOf(outline: readonly Point[], from: Point, to: Point, depth: number): Part {
  const dense = smoothPoints(outline, true);
  const box = dense.map(({ x }) => x);
  const inside = point((Math.min(...box) + Math.max(...box)) / 2, (from.y + to.y) / 2);
  const edge = along(dense, from, to, point(Math.max(from.x, to.x), (from.y + to.y) / 2)).filter((_, i) => i % 3 === 0);
  const inner = edge.map((here, index) => {
    const share = Math.sin((Math.PI * index) / Math.max(edge.length - 1, 1));
    return inset([edge[index - 1] ?? here, here, edge[index + 1] ?? here], LINE + depth * share, inside)[1] ?? here;
  });
  return closed('shade', 'shade', [...inset(edge, LINE, inside), ...inner.reverse().slice(1, -1)]);
}
