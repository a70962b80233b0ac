import { type Point, point } from '../../body/point';
import { along, inset } from './outline';
import { limb } from './shapes';
import { smoothPoints } from './smooth';
import { closed, type Part } from './stage';

/**
 * A crescent of shade inside an outline, along its edge from one place to another: the side away from the light. The
 * outline is drawn again over it, so that the line stays whole.
 */
export function shadeOf(outline: readonly Point[], from: Point, to: Point, depth: number): Part[] {
  const dense = smoothPoints(outline, true);
  const across = dense.map(({ x }) => x);
  const inside = point((Math.min(...across) + Math.max(...across)) / 2, (from.y + to.y) / 2);
  const edge = along(dense, from, to, point(from.x, (from.y + to.y) / 2)).filter((_, index) => index % 3 === 0);
  const inner = edge.map((here, index) => {
    const share = Math.sin((Math.PI * index) / Math.max(edge.length - 1, 1));
    return inset([edge[index - 1] ?? here, here, edge[index + 1] ?? here], depth * share, inside)[1] ?? here;
  });
  return [
    closed('shade', 'shade', [...edge, ...inner.reverse().slice(1, -1)]),
    { name: 'edge', look: 'edge', points: outline, closed: true },
  ];
}

/** The toy's shadow on the table: `half` wide either side of `x`. */
export const groundUnder = (x: number, y: number, half: number): Part =>
  closed('ground', 'ground', limb([point(x - half, y), point(x, y), point(x + half, y)], [3.5, 4, 3.5]));
