import { mirror, type Point, point } from '../../../body/point';
import { earParts, earPlaces, earShot } from '../head/ears';
import { faceParts, tuft } from '../head/front';
import { headPlaces } from '../head/places';
import { neckwear } from '../neckwear';
import { groundUnder, shadeOf } from '../shade';
import { limb } from '../shapes';
import { closed, open, type Part, type Stage } from '../stage';
import { bodyOutline, feetParts, wingParts } from './body';
import type { RoundForm } from './form';

/** A round toy from the front or the back. */
export function roundFacing(form: RoundForm, seenFrom: 'front' | 'back') {
  const body = bodyOutline(form);
  const { ground, bodyHalf } = form;
  const places = {
    ...headPlaces(form.head),
    ...earPlaces(form.crown),
    ...neckwear({
      crease: -form.neckHeight,
      neckHalf: form.neckHalf,
      bib: form.bibLength,
      bibHalf: 0.6 * bodyHalf,
      scarf: form.scarfLength,
    }),
    ...heights(form),
    ...rulers(form),
    crown: point(0, -form.top),
    brim: point(form.headHalf, -0.74 * form.top),
    brimMiddle: point(0, 0.16 * form.headHalf - 0.74 * form.top),
    brimLeft: point(-form.headHalf, -0.74 * form.top),
    headWide: point(0, -0.79 * form.top),
  };
  const ears = earParts(form.crown, seenFrom);
  return {
    parts: [
      groundUnder(0, ground - 1, 0.95 * bodyHalf),
      ...ears,
      ...wingParts(form),
      closed('trunk', 'fur', body),
      ...shadeOf(body, point(form.topHalf, -form.topHeight), point(8, form.base), 9),
      ...seam(form, seenFrom),
      ...(seenFrom === 'back' && form.traits.tail ? [closed('tail', 'fur-deep', tailOutline(form))] : []),
      ...feetParts(form),
      ...tuft(point(0, -form.top)),
      ...(seenFrom === 'front' ? faceParts(form.head) : []),
      closed('head', 'unseen', body),
    ],
    places,
    shots: {
      head: [...body.filter(({ y }) => y < 0), point(-bodyHalf, 6), point(bodyHalf, 6)],
      crown: [...body.filter(({ y }) => y < -0.2 * form.top), ...(ears[0]?.points ?? [])],
      ear: earShot(form.crown),
      ruler: [...body, places.rulerEnd, places.rulerTable, point(-bodyHalf, ground)],
      skirt: [...body, places.skirtSide, places.skirtSideLeft, point(0, ground)],
    },
    marks: [
      { id: 'face', mark: 'thread', of: 'trunk', at: point(0, -form.neckHeight), toward: places.base, bow: true },
      { id: 'fullest', mark: 'thread', of: 'trunk', at: point(0, 0), toward: places.base, bow: true },
    ],
  } satisfies Stage;
}

/** Where rings lie, and what hangs from them. */
function heights(form: RoundForm) {
  const skirtHem = Math.min(form.waistHeight + 0.72 * (form.ground - form.waistHeight) * form.skirtReach, form.ground);
  const skirtSide = point(form.waistHalf + 0.35 * (skirtHem - form.waistHeight), skirtHem - 6);
  const cape = Math.min(form.capeLength - form.neckHeight, form.ground - 2);
  const capeSide = point(1.18 * form.bodyHalf, cape - 10);
  return {
    base: point(0, 4 * form.ground),
    neck: point(0, -form.neckHeight),
    fullest: point(0, 0),
    tummy: point(0, 0),
    neckDrop: point(0, 6 - form.neckHeight),
    topLine: point(0, -form.topHeight),
    baseLine: point(0, form.baseHeight),
    waist: point(0, form.waistHeight),
    hem: point(0, form.hemHeight),
    waistAside: point(0.7 * form.waistHalf, form.waistHeight + 0.14 * form.waistHalf),
    skirtAside: point(0.72 * skirtSide.x, skirtHem - 1),
    skirtMiddle: point(0, skirtHem + 3),
    skirtSide,
    skirtSideLeft: mirror(skirtSide),
    waistSide: point(form.waistHalf, form.waistHeight),
    waistSideLeft: point(-form.waistHalf, form.waistHeight),
    capeHem: point(0, cape),
    capeMiddle: point(0, (cape - form.neckHeight) / 2),
    capeSide,
    capeSideLeft: mirror(capeSide),
  };
}

/** A ruler stands on the table beside the toy; level lines lead to it. */
function rulers({ bodyHalf, top, ground, topHeight, topHalf, baseHeight, baseHalf }: RoundForm) {
  const x = bodyHalf + 40;
  return {
    rulerTop: point(x, -top),
    rulerTable: point(x, ground),
    rulerEnd: point(x + 10, -top - 14),
    rulerFullest: point(x, 0),
    rulerTopLine: point(x, -topHeight),
    rulerBaseLine: point(x, baseHeight),
    tableLeft: point(-bodyHalf, ground),
    fullestRight: point(bodyHalf, 0),
    topRight: point(topHalf, -topHeight),
    baseRight: point(baseHalf, baseHeight),
  };
}

function seam(form: RoundForm, seenFrom: 'front' | 'back'): Part[] {
  const from = seenFrom === 'front' ? -form.neckHeight + 10 : 3 - form.top;
  return [open('seam', 'seam', [point(0, from), point(0.6, (from + form.base) / 2), point(0, form.base - 3)])];
}

function tailOutline({ tailHalf, tailThick, base }: RoundForm): Point[] {
  const root = point(0, 0.45 * base);
  return limb([root, point(24, root.y - 2), point(46, root.y - 16)], [tailHalf, tailThick, 0.45 * tailThick]);
}
