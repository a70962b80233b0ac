import { heading, mirror, moved, type Point, point } from '../../../body/point';
import { limb, oval } from '../shapes';
import { closed, type Part } from '../stage';
import type { RoundForm } from './form';

/** A round toy's outline, widest at its fullest line. `deep` narrows it for the side. */
export function bodyOutline(form: RoundForm, deep = 1): Point[] {
  const lower = [
    point(form.waistHalf, form.waistHeight),
    point(form.hemHalf, form.hemHeight),
    point(form.baseHalf, form.baseHeight),
  ].sort((a, b) => a.y - b.y);
  const right = [
    point(0.52 * form.headHalf, -0.95 * form.top),
    point(form.headHalf, -0.74 * form.top),
    point(form.topHalf, -form.topHeight),
    ...(form.topHeight > 1.5 * form.neckHeight ? [point(form.neckHalf, -form.neckHeight)] : []),
    point(form.bodyHalf, 0),
    ...lower,
    point(0.55 * form.baseHalf, 0.98 * form.base),
  ].map(({ x, y }) => point(x * deep, y));
  return [point(0, -form.top), ...right, point(0, form.base), ...right.map(mirror).reverse()];
}

/** Radians below level. */
const BELOW = { down: 1.05, out: 0.1, forward: 0.7, up: -0.75 } as const;

/** Both wings or stub arms, behind the body. */
export function wingParts(form: RoundForm): Part[] {
  const root = point(0.88 * form.bodyHalf, form.wingHeight + 6);
  const angle = BELOW[form.traits.arms];
  const tip = moved(root, heading(angle), 46);
  const middle = moved(root, heading(angle - 0.22), 24);
  const wing = limb([root, middle, tip], [form.wingHalf, 1.05 * form.wingHalf, 0.6 * form.wingHalf]);
  return [closed('wing', 'fur-deep', wing), closed('wing-left', 'fur-deep', wing.map(mirror))];
}

export function feetParts(form: RoundForm): Part[] {
  const foot = oval(point(0.4 * form.baseHalf, form.base), 16, 7.5);
  return [closed('foot', 'fur-deep', foot), closed('foot-left', 'fur-deep', foot.map(mirror))];
}
