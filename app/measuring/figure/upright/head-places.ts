import { mirror, type Point, point } from '../point';
import type { UprightForm } from './form';

/** Shares of the head's half width, and of its height up from the chin. */
const HEAD = [
  [0.5, 0.97],
  [0.86, 0.81],
  [1, 0.53],
  [0.9, 0.23],
  [0.52, 0.035],
] as const;

/** A place on the head: share of the half width to the right, share of the height up from the chin. */
export const onHead = (form: UprightForm, across: number, up: number): Point =>
  point(across * form.headHalf, form.chin - up * form.headHeight);

/** The head from the front or the back. */
export function headOutline(form: UprightForm): Point[] {
  const right = HEAD.map(([across, up]) => onHead(form, across, up));
  return [onHead(form, 0, 1), ...right, onHead(form, 0, 0), ...right.map(mirror).reverse()];
}

export function headPlaces(form: UprightForm) {
  return {
    headWide: onHead(form, 0, 0.62),
    crown: onHead(form, 0, 1),
    chin: onHead(form, 0, 0),
    jaw: onHead(form, 0.78, 0.12),
    jawLeft: onHead(form, -0.78, 0.12),
    brim: onHead(form, 0.97, 0.62),
    brimMiddle: onHead(form, 0, 0.56),
    brimLeft: onHead(form, -0.97, 0.62),
  };
}
