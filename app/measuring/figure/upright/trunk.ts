import { along, inset } from '../outline';
import { mirror, type Point, point } from '../point';
import { smoothPoints } from '../smooth';
import { closed, open, type Part } from '../stage';
import type { UprightForm } from './form';

/** The trunk from the front or the back, neck included: a pear on its own middle line. */
export function trunkOutline(form: UprightForm): Point[] {
  const right = [
    point(form.neckHalf - 1, -14),
    point(form.neckHalf, 0),
    point(form.shoulderHalf, form.shoulderHeight),
    point(form.chestHalf, form.chestHeight),
    point(form.waistHalf, form.waistHeight),
    point(form.tummyHalf, form.tummyHeight),
    point(form.hipHalf, form.hipHeight),
    point(0.6 * form.hipHalf, 0.985 * form.trunkHeight),
  ];
  return [...right, point(0, form.trunkHeight), ...right.map(mirror).reverse()];
}

/** The trunk's shape with its shade and the seam down its middle. */
export function trunkParts(form: UprightForm): Part[] {
  const outline = trunkOutline(form);
  return [
    closed('trunk', 'fur', outline),
    shadeOf(outline, point(form.tummyHalf, form.chestHeight), point(10, form.trunkHeight), 9),
    open('seam', 'seam', [point(0, 2), point(0.6, 0.5 * form.trunkHeight), point(0, form.trunkHeight - 3)]),
  ];
}

/** A crescent inside the right-hand edge of an outline, from one place on it to another: the side away from the light. */
export function shadeOf(outline: readonly Point[], from: Point, to: Point, depth: number): Part {
  const dense = smoothPoints(outline, true);
  const box = dense.map(({ x }) => x);
  const inside = point((Math.min(...box) + Math.max(...box)) / 2, (from.y + to.y) / 2);
  const edge = along(dense, from, to, point(Math.max(from.x, to.x), (from.y + to.y) / 2)).filter((_, i) => i % 3 === 0);
  const inner = edge.map((here, index) => {
    const share = Math.sin((Math.PI * index) / Math.max(edge.length - 1, 1));
    return inset([edge[index - 1] ?? here, here, edge[index + 1] ?? here], depth * share, inside)[1] ?? here;
  });
  return closed('shade', 'shade', [...edge, ...inner.reverse().slice(1, -1)]);
}
