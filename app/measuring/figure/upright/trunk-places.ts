import { mirror, type Point, point } from '../../../body/point';
import { neckwear } from '../neckwear';
import { across } from '../outline';
import { smoothPoints } from '../smooth';
import type { UprightForm } from './form';
import { trunkOutline } from './trunk';

/** Where tapes lie on the trunk, from the front or the back; one-sided places on the viewer's right. */
export function trunkPlaces(
  form: UprightForm,
  seenFrom: 'front' | 'back',
  { shoulderEnd, underarm }: { readonly shoulderEnd: Point; readonly underarm: Point },
  ground: number,
) {
  const { neckHalf } = form;
  const inShoulder = point((neckHalf + shoulderEnd.x) / 2, form.chestHeight);
  const [shoulderMiddle] = across(smoothPoints(trunkOutline(form), true), inShoulder, point(0, 1));
  const strapEnd = Math.max(form.bandTop, form.shoulderHeight + 10);
  const plumb = shoulderEnd.x + Math.max(form.tummyHalf - shoulderEnd.x, 4) * form.sideInset;
  const armhole = Math.min(shoulderEnd.x, underarm.x) - 6;
  const skirtHem = skirtHemHeight(form, ground);
  const skirtSide = point(form.hipHalf + 0.3 * (skirtHem - form.waistHeight), skirtHem - 6);
  const capeSide = point(1.5 * form.tummyHalf, form.capeLength - 8);
  return {
    ...neckwear({ crease: 0, neckHalf, bib: form.bibLength, bibHalf: 0.62 * form.chestHalf, scarf: form.scarfLength }),
    neck: point(0, 0),
    neckCrease: point(0, form.traits.neck === 'clear' ? 0 : 5),
    neckDrop: point(0, seenFrom === 'front' ? form.frontNeckDrop : form.backNeckDrop),
    shoulderMiddle,
    napeLow: point(0, 0.55 * form.shoulderHeight),
    chest: point(0, form.chestHeight + 6),
    bandTop: point(0, form.bandTop),
    bandFront: point(0, form.bandTop + 0.18 * form.chestHalf),
    waist: point(0, form.waistHeight),
    waistFront: point(0, form.waistHeight + 0.2 * form.waistHalf),
    waistAside: point(0.7 * form.waistHalf, form.waistHeight + 0.14 * form.waistHalf),
    waistSide: point(form.waistHalf, form.waistHeight - 5),
    tummy: point(0, form.tummyHeight),
    hip: point(0, form.hipHeight),
    hem: point(0, form.hemHeight),
    hemFront: point(0, form.hemHeight + 0.2 * form.hipHalf),
    base: point(0, form.trunkHeight),
    crotch: point(0, form.trunkHeight - 4),
    crotchFront: point(0, form.crotchFront),
    lengthChest: point(0.5 * form.chestHalf, form.chestHeight),
    lengthTummy: point(0.52 * form.tummyHalf, form.tummyHeight),
    lengthHem: point(0.46 * form.hipHalf, form.hemHeight + 0.17 * form.hipHalf),
    loopTummy: point(0.3 * form.tummyHalf, form.tummyHeight),
    loopBack: point(0.78 * form.tummyHalf, 0.72 * form.trunkHeight),
    seatBack: point(0.24 * form.hipHalf, 0.8 * form.trunkHeight),
    waistBack: point(0.3 * form.waistHalf, form.waistHeight - 6),
    strapFront: point(Math.min(0.34 * form.chestHalf, 0.42 * form.shoulderHalf), strapEnd + 0.12 * form.chestHalf),
    strapBack: point(Math.min(0.74 * form.chestHalf, 0.86 * form.shoulderHalf), strapEnd + form.strapBack),
    armholeTop: point(armhole, shoulderEnd.y),
    armholeFoot: point(armhole, Math.max(underarm.y, shoulderEnd.y + 8)),
    plumbTop: point(plumb, shoulderEnd.y),
    plumbFoot: point(plumb, form.tummyHeight),
    plumbMiddle: point(plumb, (shoulderEnd.y + form.chestHeight) / 2),
    skirtHem: point(0.72 * skirtSide.x, skirtHem - 2),
    skirtMiddle: point(0, skirtHem),
    skirtSide,
    skirtSideLeft: mirror(skirtSide),
    waistSideLeft: mirror(point(form.waistHalf, form.waistHeight - 5)),
    capeHem: point(0, form.capeLength),
    capeMiddle: point(0, 0.5 * form.capeLength),
    capeSide,
    capeSideLeft: mirror(capeSide),
    capeShoulder: point(form.shoulderHalf + 6, form.shoulderHeight + 2),
    capeShoulderLeft: point(-form.shoulderHalf - 6, form.shoulderHeight + 2),
  };
}

/** A skirt's hem hangs over the legs; seated, it lies over the lap. */
function skirtHemHeight(form: UprightForm, ground: number): number {
  const drop = (ground - form.waistHeight) * (form.traits.posture === 'stands' ? 0.6 : 0.72) * form.skirtLength;
  return form.waistHeight + Math.min(Math.max(drop, 14), 1.02 * (ground - form.waistHeight));
}
