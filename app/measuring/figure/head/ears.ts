import { lerp, mirror, type Point, point } from '../../../body/point';
import { limb, oval, station } from '../shapes';
import { closed, type Part } from '../stage';
import type { HeadForm } from './form';
import { onHead } from './places';

/** Both ears from the front or the back, drawn before the head. */
export function earParts(head: HeadForm, seenFrom: 'front' | 'back'): Part[] {
  if (head.ears === 'none') return [];
  const [shape, lining] = [earOutline(head, 1), earOutline(head, 0.56)];
  const outer = [closed('ear', 'fur', shape), closed('ear-left', 'fur', shape.map(mirror))];
  const inner = [closed('ear-lining', 'blush', lining), closed('ear-lining', 'blush', lining.map(mirror))];
  return seenFrom === 'front' ? [...outer, ...inner] : outer;
}

/** Where an ear joins the head, from its near to its far end, and where it is thickest. */
export function earPlaces(head: HeadForm) {
  const { across, up } = earRoot(head);
  const wide = Math.min(head.earSize, 1.3);
  const top = head.ears === 'top';
  const thick = station(earAxis(head), top ? 0.55 : 0.6);
  return {
    earNear: top ? onHead(head, across - 0.24 * wide, 0.95 + 0.035 * wide) : onHead(head, across, up + 0.12 * wide),
    earFar: top
      ? onHead(head, across + 0.2 * wide, 0.93 - 0.05 * wide)
      : onHead(head, across + 0.15 * wide, up - 0.1 * wide),
    earThick: thick.at,
    earThickToward: thick.toward,
  };
}

/** What a picture of the ear at the viewer's right must show: all of it, and the head beside it. */
export const earShot = (head: HeadForm): Point[] => [
  ...(earParts(head, 'back')[0]?.points ?? []),
  onHead(head, 0.15, 0.9),
  onHead(head, 0.9, 0.45),
];

/** Where the middle of an ear's base is, in shares of the head: lower and farther out the farther it is from the crown. */
function earRoot(head: HeadForm): { across: number; up: number } {
  const out = Math.min(Math.max(head.earInset - 1, -0.5), 0.7);
  return head.ears === 'top'
    ? { across: 0.48 + 0.3 * out, up: 0.93 }
    : { across: 0.82 + 0.12 * out, up: 0.75 - 0.28 * out };
}

function earOutline(head: HeadForm, share: number): Point[] {
  const size = head.earSize * share;
  const axis = earAxis(head);
  if (head.ears !== 'top')
    return oval(lerp(axis[0] ?? point(0, 0), axis[2] ?? point(0, 0), 0.52), 17 * size, 17 * size);
  const [root, middle, tip] = [axis[0] ?? point(0, 0), axis[1] ?? point(0, 0), axis[2] ?? point(0, 0)];
  return limb([root, middle, lerp(middle, tip, share)], [11 * size, 13 * size, 8 * size]);
}

/** From inside the head to near the ear's tip. */
function earAxis(head: HeadForm): Point[] {
  const { across, up } = earRoot(head);
  const { x, y } = onHead(head, across, up);
  if (head.ears === 'top') {
    const tall = 46 * head.earSize;
    return [point(x, y), point(x + 5, y - 0.52 * tall), point(x + 8, y - tall)];
  }
  return [point(x, y), point(x + 8 * head.earSize, y - 3), point(x + 17 * head.earSize, y - 7)];
}
