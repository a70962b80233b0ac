import { mirror, type Point, point } from '../../../body/point';
import { earParts, earPlaces, earShot } from '../head/ears';
import { headParts } from '../head/front';
import { headOutline, headPlaces, onHead } from '../head/places';
import { neckwear } from '../neckwear';
import { groundUnder, shadeOf } from '../shade';
import { limb, oval } from '../shapes';
import { closed, type Mark, open, type Part, type Stage } from '../stage';
import type { FourLeggedForm } from './form';

/** A four-legged toy from the front or the back: the trunk is seen from its end. */
export function fourLeggedFacing(form: FourLeggedForm, seenFrom: 'front' | 'back') {
  const trunk = trunkOutline(form);
  const legs = legParts(form, seenFrom);
  const head = headOutline(form.head);
  const heads = [...earParts(form.head, seenFrom), ...headParts(form.head, seenFrom)];
  const { chestDrop, legApart, legHalf, neckHalf, ground } = form;
  const inner = Math.max(legApart - legHalf, 2);
  const places = {
    ...headPlaces(form.head),
    ...earPlaces(form.head),
    ...neckwear({ crease: 0, neckHalf, bib: form.bibLength, bibHalf: 0.75 * form.chestHalf, scarf: form.scarfLength }),
    chestMiddle: point(0, chestDrop / 2),
    legLine: point(0, chestDrop),
    legLineLeft: point(-legApart - legHalf, chestDrop - 3),
    legLineRight: point(legApart + legHalf, chestDrop - 3),
    innerLeft: point(-inner, chestDrop + 12),
    innerRight: point(inner, chestDrop + 12),
    base: point(0, 200),
    ...rulerBeside(form),
  };
  const body: Part[] = [
    closed('trunk', 'fur', trunk),
    ...shadeOf(trunk, point(form.chestHalf, 0.9 * form.chestHalf), point(8, 2 * form.chestHalf), 8),
    open('seam', 'seam', [point(0, 3), point(0, 1.9 * form.chestHalf)]),
  ];
  const thread: Mark = { id: 'neck', mark: 'thread', of: 'trunk', at: point(0, 0), toward: places.base, bow: true };
  return {
    parts: [
      groundUnder(0, ground - 1, 1.5 * form.chestHalf),
      ...(seenFrom === 'back' ? heads : []),
      ...legs.under,
      ...body,
      ...(seenFrom === 'back' && form.traits.tail ? [closed('tail', 'fur-deep', tailOutline(form))] : []),
      ...legs.over,
      ...(seenFrom === 'front' ? heads : []),
    ],
    places,
    shots: {
      face: [...head, point(0, 0), ...earParts({ ...form.head, ears: 'top' }, 'front').flatMap(({ points }) => points)],
      head: [...head, point(0, 22), point(-form.head.half - 14, 0), point(form.head.half + 14, 0)],
      crown: [...head, ...(earParts(form.head, seenFrom)[0]?.points ?? [])],
      ear: earShot(form.head),
      chest: [onHead(form.head, -0.5, 0.4), ...trunk, point(0, ground), places.legLineLeft, places.legLineRight],
    },
    marks: seenFrom === 'front' ? [thread] : [],
  } satisfies Stage;
}

/** A ruler that stands beside the toy. */
function rulerBeside({ head, chestHalf, ground }: FourLeggedForm) {
  const x = Math.max(head.half, chestHalf) + 24;
  return { rulerTop: point(x, onHead(head, 0, 1).y), rulerTable: point(x, ground), table: point(0, ground) };
}

function trunkOutline({ neckHalf, chestHalf }: FourLeggedForm): Point[] {
  const right = [
    point(neckHalf, -20),
    point(neckHalf + 1, -1),
    point(0.84 * chestHalf, 0.42 * chestHalf),
    point(chestHalf, 1.05 * chestHalf),
    point(0.84 * chestHalf, 1.68 * chestHalf),
    point(0.4 * chestHalf, 1.95 * chestHalf),
  ];
  return [...right, point(0, 2 * chestHalf), ...right.map(mirror).reverse()];
}

function legParts(form: FourLeggedForm, seenFrom: 'front' | 'back'): { under: Part[]; over: Part[] } {
  const { legApart, legHalf, footHalf, ground, chestDrop, chestHalf } = form;
  const pair = (name: string, look: Part['look'], points: readonly Point[]) => [
    closed(name, look, points),
    closed(`${name}-left`, look, points.map(mirror)),
  ];
  if (form.traits.posture === 'sits') {
    const sole = (x: number) => oval(point(x, ground - footHalf), 1.1 * footHalf, 1.05 * footHalf);
    const pad = oval(point(legApart + 4, ground - footHalf + 1), 0.55 * footHalf, 0.5 * footHalf);
    const haunch = pair(
      'haunch',
      'fur-deep',
      oval(point(0.86 * chestHalf, 1.5 * chestHalf), 0.42 * chestHalf, 0.5 * chestHalf),
    );
    if (seenFrom === 'back') return { under: [], over: haunch };
    return { under: haunch, over: [...pair('front-leg', 'fur', sole(legApart + 4)), ...pair('pad', 'fur-pale', pad)] };
  }
  const leg = (x: number, top: number) =>
    limb(
      [point(x, top), point(x + 1, (top + ground) / 2), point(x + 1, ground - 9)],
      [1.12 * legHalf, legHalf, 0.9 * footHalf],
    );
  const foot = (x: number) => oval(point(x + 2, ground - 8), 1.18 * footHalf, Math.min(8, 0.7 * footHalf));
  const hind = Math.max(0.92 * chestHalf, legApart + 0.75 * legHalf);
  const up = (points: Point[]) => points.map(({ x, y }) => point(x, y - 4));
  const [near, far] = seenFrom === 'front' ? [legApart, hind] : [hind, legApart];
  return {
    under: [
      ...pair('far-leg', 'fur-deep', up(leg(far, 1.3 * chestHalf))),
      ...pair('far-foot', 'fur-deep', up(foot(far))),
    ],
    over: [...pair('front-leg', 'fur', leg(near, chestDrop + 10)), ...pair('front-foot', 'fur', foot(near))],
  };
}

function tailOutline({ tailHalf, tailThick, chestHalf }: FourLeggedForm): Point[] {
  const root = point(0, 0.55 * chestHalf);
  return limb([root, point(14, root.y - 14), point(34, root.y - 24)], [tailHalf, tailThick, 0.45 * tailThick]);
}
