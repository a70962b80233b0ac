import { mirror, type Point, point } from '../../../body/point';
import type { HeadForm } from './form';

/** Shares of the head's half width, and of its height up from the chin. */
const HEAD = [
  [0.46, 0.965],
  [0.83, 0.8],
  [1, 0.5],
  [0.9, 0.23],
  [0.52, 0.035],
] as const;

/** A place on the head: share of the half width to the right, share of the height up from the chin. */
export const onHead = (head: HeadForm, across: number, up: number): Point =>
  point(head.chin.x + across * head.half, head.chin.y - up * head.height);

/** The head from the front or the back. */
export function headOutline(head: HeadForm): Point[] {
  const right = HEAD.map(([across, up]) => onHead(head, across, up));
  return [onHead(head, 0, 1), ...right, onHead(head, 0, 0), ...right.map(mirror).reverse()];
}

export function headPlaces(head: HeadForm) {
  return {
    headWide: onHead(head, 0, 0.69),
    crown: onHead(head, 0, 1),
    chin: onHead(head, 0, 0),
    jaw: onHead(head, 0.46, 0.028),
    jawLeft: onHead(head, -0.46, 0.028),
    brim: onHead(head, 0.96, 0.64),
    brimMiddle: onHead(head, 0, 0.57),
    brimLeft: onHead(head, -0.96, 0.64),
  };
}
