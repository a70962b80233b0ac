import { type Point, point } from '../../../body/point';
import { shadeOf } from '../shade';
import { limb, oval } from '../shapes';
import { closed, open, type Part } from '../stage';
import type { HeadForm } from './form';
import { noseOutline } from './front';

/** The profile, face to the right: shares of the half depth, and of the height up from the chin. */
const PROFILE = [
  [-0.2, 1],
  [0.4, 0.955],
  [0.8, 0.76],
  [0.95, 0.5],
  [0.92, 0.22],
  [0.6, 0.03],
  [-0.1, 0],
  [-0.66, 0.08],
  [-0.95, 0.3],
  [-1, 0.58],
  [-0.76, 0.87],
] as const;

export const onSide = (head: HeadForm, ahead: number, up: number): Point =>
  point(head.sideChin.x + ahead * head.halfDepth, head.sideChin.y - up * head.height);

export const sideHead = (head: HeadForm): Point[] => PROFILE.map(([ahead, up]) => onSide(head, ahead, up));

/** The near ear; none on a toy without. */
export function sideEar(head: HeadForm): Part[] {
  const size = head.earSize;
  const { ears } = head;
  const root = earRoot(head);
  if (ears === 'none') return [];
  if (ears === 'side') {
    return [
      closed('ear', 'fur', oval(root, 14 * size, 16 * size)),
      closed('ear-lining', 'blush', oval(root, 7.5 * size, 9 * size)),
    ];
  }
  const axis = (share: number) => [
    root,
    point(root.x - 5, root.y - 24 * size),
    point(root.x - 8, root.y - 24 * size - 22 * size * share),
  ];
  return [
    closed('ear', 'fur', limb(axis(1), [10 * size, 12 * size, 7 * size])),
    closed('ear-lining', 'blush', limb(axis(0.5), [5 * size, 6.5 * size, 4 * size])),
  ];
}

/** Where tapes lie on the head from the side: along a hood, and beside the ear. */
export function sideHeadPlaces(head: HeadForm) {
  const root = earRoot(head);
  const top = head.ears === 'top';
  return {
    nape: onSide(head, -0.72, 0.08),
    headBack: onSide(head, -0.98, 0.5),
    earLevel: onSide(head, -0.2, 0.5),
    crownBack: onSide(head, -0.7, 0.88),
    hoodTop: onSide(head, 0.3, 0.965),
    hoodBrow: onSide(head, 0.42, 0.74),
    hoodEdge: onSide(head, 0.38, 0.5),
    hoodCheek: onSide(head, 0.38, 0.28),
    hoodChin: onSide(head, 0.3, 0.04),
    earFront: top ? point(root.x + 9 * head.earSize, root.y + 5) : point(root.x + 14 * head.earSize, root.y),
    hoodAtEar: top ? onSide(head, 0.34, 0.9) : onSide(head, 0.42, 0.72),
  };
}

/** Farther back the farther the ear is from the hood's edge. */
function earRoot(head: HeadForm): Point {
  const back = 0.16 * (head.earBehind - 1);
  return head.ears === 'top' ? onSide(head, -0.18 - back, 0.93) : onSide(head, -0.28 - back, 0.72);
}

/** The head from the side, but for its ear. */
export function sideHeadParts(head: HeadForm): Part[] {
  const outline = sideHead(head);
  return [closed('head', 'fur', outline), ...shadeOf(outline, onSide(head, -0.8, 0.85), onSide(head, -0.3, 0.02), 6)];
}

export function sideFace(head: HeadForm): Part[] {
  const { halfDepth: deep, height: high } = head;
  const eye = onSide(head, 0.62, 0.45);
  const long = head.snout;
  const muzzle = onSide(head, 0.5 + 0.34 * long, 0.235);
  return [
    closed('cheek', 'blush', oval(onSide(head, 0.34, 0.25), 0.13 * deep, 0.065 * high)),
    closed('muzzle', 'fur-pale', oval(muzzle, 0.34 * long * deep, 0.165 * high)),
    closed('nose', 'ink', noseOutline(point(muzzle.x + 0.235 * long * deep, muzzle.y - 0.088 * high), 0.1 * deep)),
    open('mouth', 'fine', [
      point(muzzle.x + 0.26 * long * deep, muzzle.y + 0.045 * high),
      point(muzzle.x + 0.14 * long * deep, muzzle.y + 0.085 * high),
      point(muzzle.x + 0.02 * long * deep, muzzle.y + 0.05 * high),
    ]),
    closed('eye', 'ink', oval(eye, 0.06 * deep, 0.072 * deep)),
    closed('glint', 'glint', oval(point(eye.x + 1, eye.y - 1.4), 1.2, 1.2)),
  ];
}
