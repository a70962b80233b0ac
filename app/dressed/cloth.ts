import { mirror, type Point, point } from '../body/point';
import { closed, open, type Part } from '../measuring/figure';

/** Parts made of cloth. Corners stay corners: a point named twice is not rounded. */
export const cloth = (points: readonly Point[]): Part => closed('clothes', 'cloth', points);
export const inside = (points: readonly Point[]): Part => closed('clothes', 'cloth-deep', points);
export const drawnSeam = (points: readonly Point[]): Part => open('clothes', 'cloth-line', points);
export const fold = (points: readonly Point[]): Part => open('clothes', 'cloth-fold', points);
export const stitches = (points: readonly Point[]): Part => open('clothes', 'cloth-stitch', points);

export const corner = (at: Point): Point[] => [at, at];

/** A right half, from the upper centre outward and down to the lower centre, and its mirror image: one closed shape. */
export const bothHalves = (right: readonly Point[]): Point[] => [...right, ...right.map(mirror).reverse()];

/** The same line on the toy's other side. */
export const otherHalf = (points: readonly Point[]): Point[] => points.map(mirror);

/** A line round the trunk as seen a little from above: from one side, lowest at the centre, to the other. */
export function hoop(half: number, y: number, sag = 0.12): Point[] {
  return [-1, -0.6, 0, 0.6, 1].map((x) => point(x * half, y + sag * half * (1 - x * x)));
}
