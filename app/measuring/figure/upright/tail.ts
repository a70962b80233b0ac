import { type Point, point } from '../../../body/point';
import { limb, station } from '../shapes';
import { closed, type Part } from '../stage';
import type { UprightForm } from './form';

/** The tail from behind: it sticks out over the seat and curls aside. */
export function tailOf(form: UprightForm) {
  const root = point(0, form.tailHeight);
  const { hipHalf } = form;
  return tailAlong([root, point(0.78 * hipHalf, root.y + 8), point(1.42 * hipHalf, root.y - 20)], form);
}

/** The tail from the side, behind the seat. */
export function sideTailOf(form: UprightForm) {
  const root = point(-0.8 * form.tummyHalfDepth, form.tailHeight);
  return tailAlong([root, point(root.x - 22, root.y - 2), point(root.x - 40, root.y - 18)], form);
}

function tailAlong(axis: readonly Point[], form: UprightForm) {
  const { tailHalf, tailThick } = form;
  const part: Part = closed('tail', 'fur', limb(axis, [tailHalf, tailThick, 0.3 * tailThick]));
  const [base, thick] = [station(axis, 0.12), station(axis, 0.52)];
  const places = {
    tailTop: point((axis[0] ?? point(0, 0)).x, (axis[0] ?? point(0, 0)).y - tailHalf),
    tailBase: base.at,
    tailBaseToward: base.toward,
    tailThick: thick.at,
    tailThickToward: thick.toward,
  };
  return { parts: form.traits.tail ? [part] : [], outline: part.points, places };
}
