import { type Point, point } from '../point';
import { limb, oval } from '../shapes';
import { closed, open, type Part } from '../stage';
import type { UprightForm } from './form';
import { noseOutline } from './head';
import { shadeOf } from './trunk';

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

/** The head sits a little before the neck. */
const FORWARD = 5;

export const onSide = (form: UprightForm, ahead: number, up: number): Point =>
  point(FORWARD + ahead * form.headHalfDepth, form.chin - up * form.headHeight);

export const sideHead = (form: UprightForm): Point[] => PROFILE.map(([ahead, up]) => onSide(form, ahead, up));

/** The near ear; none on a toy without. */
export function sideEar(form: UprightForm): Part[] {
  const size = form.earSize;
  const { ears } = form.traits;
  const root = earRoot(form);
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

/** The near edge of the ear, and the hood's edge at its height. */
export function sideEarPlaces(form: UprightForm) {
  const root = earRoot(form);
  const top = form.traits.ears === 'top';
  return {
    earFront: top ? point(root.x + 9 * form.earSize, root.y + 5) : point(root.x + 14 * form.earSize, root.y),
    hoodAtEar: top ? onSide(form, 0.34, 0.9) : onSide(form, 0.42, 0.72),
  };
}

/** Farther back the farther the ear is from the hood's edge. */
function earRoot(form: UprightForm): Point {
  const back = 0.16 * (form.earBehind - 1);
  return form.traits.ears === 'top' ? onSide(form, -0.18 - back, 0.93) : onSide(form, -0.28 - back, 0.72);
}

export function sideFace(form: UprightForm): Part[] {
  const { headHalfDepth: deep, headHeight: high } = form;
  const eye = onSide(form, 0.62, 0.45);
  const muzzle = onSide(form, 0.84, 0.235);
  return [
    shadeOf(sideHead(form), onSide(form, -0.8, 0.85), onSide(form, -0.3, 0.02), 6),
    closed('cheek', 'blush', oval(onSide(form, 0.34, 0.25), 0.13 * deep, 0.065 * high)),
    closed('muzzle', 'fur-pale', oval(muzzle, 0.34 * deep, 0.165 * high)),
    closed('nose', 'ink', noseOutline(point(muzzle.x + 0.26 * deep, muzzle.y - 0.095 * high), 0.1 * deep)),
    open('mouth', 'fine', [
      point(muzzle.x + 0.26 * deep, muzzle.y + 0.045 * high),
      point(muzzle.x + 0.14 * deep, muzzle.y + 0.085 * high),
      point(muzzle.x + 0.02 * deep, muzzle.y + 0.05 * high),
    ]),
    closed('eye', 'ink', oval(eye, 0.06 * deep, 0.072 * deep)),
    closed('glint', 'glint', oval(point(eye.x + 1, eye.y - 1.4), 1.2, 1.2)),
  ];
}
