import { mirror, type Point, point } from '../../../body/point';
import { shadeOf } from '../shade';
import { oval } from '../shapes';
import { closed, open, type Part } from '../stage';
import type { HeadForm } from './form';
import { headOutline, onHead } from './places';

/** The head with its face or its seam; ears are drawn before it. */
export function headParts(head: HeadForm, seenFrom: 'front' | 'back'): Part[] {
  const outline = headOutline(head);
  const shade = shadeOf(outline, onHead(head, 0.95, 0.7), onHead(head, 0.3, 0.01), 6);
  const parts = [closed('head', 'fur', outline), ...shade, ...tuft(onHead(head, 0, 1))];
  if (seenFrom === 'front') return [...parts, ...faceParts(head)];
  return [...parts, open('seam', 'seam', [onHead(head, 0, 0.97), onHead(head, 0.01, 0.5), onHead(head, 0, 0.03)])];
}

/** Two short strokes of fur on the crown. */
export function tuft({ x, y }: Point): Part[] {
  return [
    open('tuft', 'line', [point(x - 9, y + 1), point(x - 7, y - 4), point(x - 2, y - 6)]),
    open('tuft', 'line', [point(x, y), point(x + 2, y - 6), point(x + 7, y - 8)]),
  ];
}

/** Eyes, muzzle and cheeks. */
export function faceParts(head: HeadForm): Part[] {
  const { half: headHalf, height: headHeight } = head;
  const [eye, nose, cheek] = [onHead(head, 0.42, 0.44), onHead(head, 0, 0.335), onHead(head, 0.66, 0.27)];
  const muzzle = onHead(head, 0, 0.25);
  const both = (name: string, look: Part['look'], points: Point[]) => [
    closed(name, look, points),
    closed(name, look, points.map(mirror)),
  ];
  return [
    ...both('cheek', 'blush', oval(cheek, 0.15 * headHalf, 0.07 * headHeight)),
    closed('muzzle', 'fur-pale', oval(muzzle, 0.37 * headHalf, 0.175 * headHeight)),
    closed('nose', 'ink', noseOutline(nose, 0.145 * headHalf)),
    open('mouth', 'fine', [
      point(-0.17 * headHalf, nose.y + 0.14 * headHeight),
      point(-0.07 * headHalf, nose.y + 0.165 * headHeight),
      point(0, nose.y + 0.115 * headHeight),
      point(0.07 * headHalf, nose.y + 0.165 * headHeight),
      point(0.17 * headHalf, nose.y + 0.14 * headHeight),
    ]),
    open('mouth', 'fine', [point(0, nose.y + 4), point(0, nose.y + 0.115 * headHeight)]),
    ...both('eye', 'ink', oval(eye, 0.068 * headHalf, 0.068 * headHalf * 1.12)),
    closed('glint', 'glint', oval(point(eye.x + 1.1, eye.y - 1.4), 1.2, 1.2)),
    closed('glint', 'glint', oval(point(1.1 - eye.x, eye.y - 1.4), 1.2, 1.2)),
  ];
}

/** A stitched nose: a soft triangle, broad side up. */
export const noseOutline = ({ x, y }: Point, half: number): Point[] => [
  point(x, y - 0.42 * half),
  point(x + 0.8 * half, y - 0.5 * half),
  point(x + half, y - 0.1 * half),
  point(x + 0.4 * half, y + 0.55 * half),
  point(x, y + 0.72 * half),
  point(x - 0.4 * half, y + 0.55 * half),
  point(x - half, y - 0.1 * half),
  point(x - 0.8 * half, y - 0.5 * half),
];
