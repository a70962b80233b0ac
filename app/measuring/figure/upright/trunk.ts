import { mirror, type Point, point } from '../../../body/point';
import { shadeOf } from '../shade';
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
    ...shadeOf(outline, point(form.tummyHalf, form.chestHeight), point(10, form.trunkHeight), 9),
    open('seam', 'seam', [point(0, 2), point(0.6, 0.5 * form.trunkHeight), point(0, form.trunkHeight - 3)]),
  ];
}
