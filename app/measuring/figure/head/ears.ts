import { between, mirror, type Point, point } from '../point';
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

/** Where an ear joins the head and where it is thickest. */
export function earPlaces(head: HeadForm) {
  const axis = earAxis(head);
  const thick = station(axis, head.ears === 'top' ? 0.55 : 0.6);
  const [low, high] = head.ears === 'top' ? [0.72, 0.24] : [0.97, 0.76];
  const reach = (across: number) => across + (head.earInset - 1) * 0.3;
  const earNear = head.ears === 'top' ? onHead(head, reach(high), 0.985) : onHead(head, 0.8, 0.87);
  const earFar = head.ears === 'top' ? onHead(head, reach(low), 0.89) : onHead(head, low + 0.02, 0.66);
  return { earNear, earFar, earThick: thick.at, earThickToward: thick.toward };
}

function earOutline(head: HeadForm, share: number): Point[] {
  const size = head.earSize * share;
  const axis = earAxis(head);
  if (head.ears !== 'top')
    return oval(between(axis[0] ?? point(0, 0), axis[2] ?? point(0, 0), 0.52), 17 * size, 17 * size);
  const [root, middle, tip] = [axis[0] ?? point(0, 0), axis[1] ?? point(0, 0), axis[2] ?? point(0, 0)];
  return limb([root, middle, between(middle, tip, share)], [11 * size, 13 * size, 8 * size]);
}

/** From inside the head to near the ear's tip. */
function earAxis(head: HeadForm): Point[] {
  const slide = (head.earInset - 1) * 0.3 * head.half;
  if (head.ears === 'top') {
    const { x, y } = onHead(head, 0.48, 0.93);
    const tall = 46 * head.earSize;
    return [point(x + slide, y), point(x + slide + 5, y - 0.52 * tall), point(x + slide + 8, y - tall)];
  }
  const { x, y } = onHead(head, 0.82, 0.75);
  return [point(x, y), point(x + 8 * head.earSize, y - 3), point(x + 17 * head.earSize, y - 7)];
}
