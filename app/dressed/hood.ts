import { type Point, point } from '../body/point';
import { closed, headOutline, onHead, type Part, type Stage } from '../measuring/figure';
import { cloth, drawnSeam, fold, otherHalf, stitches } from './cloth';
import type { Hood } from './clothes';

/** A toy's head, on the stage it is seen on. */
type Hooded = { readonly head: Parameters<typeof onHead>[0]; readonly view: 'front' | 'back'; readonly stage: Stage };

/** How much larger than the head a hood is drawn. */
const ROUND = 1.09;

/** What of a face is seen in a hood; cheeks lie under its edge. */
const FEATURES = ['muzzle', 'nose', 'mouth', 'eye', 'glint'];

/** A hood over the head: from the front a ring round the face, from behind all of it. */
export function hoodParts(hood: Hood, { head, view, stage }: Hooded): Part[] {
  const grown = (at: Point): Point => point(at.x * ROUND, head.chin.y - (head.chin.y - at.y) * (ROUND - 0.02));
  const outline = headOutline(head)
    .map(grown)
    .map((at) => (at.y > head.chin.y - 4 ? point(at.x * 1.02, at.y + 7) : at));
  if (view === 'back') {
    const aside = hood.strip ? 0.2 * head.half : 0;
    const seam = [grown(onHead(head, 0, 1.0)), grown(onHead(head, 0, 0.5)), grown(onHead(head, 0, -0.06))].map(
      ({ x, y }) => point(x + aside, y),
    );
    return [cloth(outline), drawnSeam(seam), ...(hood.strip ? [drawnSeam(otherHalf(seam))] : [])];
  }
  const open = Math.min(Math.max(hood.face, 0.92), 1.12);
  const face = faceOf(open, hood.meets, (across, up) => onHead(head, across, up));
  const rim = faceOf(open * 1.1, hood.meets, (across, up) => onHead(head, across, up - 0.01));
  const strip = hood.strip
    ? [point(0.2 * head.half, grown(onHead(head, 0, 0.98)).y), point(0.2 * head.half, onHead(head, 0, 0.8 * open).y)]
    : [];
  return [
    cloth(outline),
    closed('face', 'fur', face),
    ...stage.parts.filter(({ name }) => FEATURES.includes(name)),
    ...(strip.length > 0 ? [drawnSeam(strip), drawnSeam(otherHalf(strip))] : []),
    ...(hood.rib
      ? [drawnSeam([...rim, ...rim.slice(0, 1)]), ...rim.map((at, index) => fold([at, face[index] ?? at]))]
      : [stitches([...rim, ...rim.slice(0, 1)])]),
  ];
}

/** Where the face looks out. */
function faceOf(open: number, meets: boolean, on: (across: number, up: number) => Point): Point[] {
  const low = meets ? 0.07 : 0.015;
  const right = [on(0.42 * open, 0.73 * open), on(0.72 * open, 0.5), on(0.66 * open, 0.22), on(0.34, low + 0.02)];
  return [on(0, 0.79 * open), ...right, on(0, low), ...otherHalf(right).reverse()];
}

/** The ears a hood covers: bumps of cloth behind it. */
export function coveredEars(ears: readonly Part[]): Part[] {
  return ears
    .filter(({ name }) => name === 'ear' || name === 'ear-left')
    .map(({ points }) => {
      const middle = points.reduce(
        (sum, { x, y }) => ({
          x: sum.x + x / points.length,
          y: sum.y + y / points.length,
        }),
        { x: 0, y: 0 },
      );
      return closed(
        'clothes',
        'cloth',
        points.map(({ x, y }) => point(middle.x + (x - middle.x) * 1.14, middle.y + (y - middle.y) * 1.14)),
      );
    });
}
