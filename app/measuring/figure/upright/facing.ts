import { mirror, type Point, point } from '../../../body/point';
import { earParts, earPlaces, earShot } from '../head/ears';
import { headParts } from '../head/front';
import { headOutline, headPlaces, onHead } from '../head/places';
import { groundUnder } from '../shade';
import { oval } from '../shapes';
import { closed, type Mark, type MarkId, type Part, type Stage } from '../stage';
import { armOf, type Held, otherSide } from './arm';
import type { UprightForm } from './form';
import { legsOf } from './legs';
import { tailOf } from './tail';
import { trunkOutline, trunkParts } from './trunk';
import { trunkPlaces } from './trunk-places';

/** An upright toy from the front or the back. Places on one side only are on the viewer's right. */
export function uprightFacing(form: UprightForm, seenFrom: 'front' | 'back', held: Held = form.traits.arms) {
  const trunk = trunkOutline(form);
  const arm = armOf(form, trunk, held);
  const legs = legsOf(form, seenFrom);
  const tail = tailOf(form);
  const head = headOutline(form.head);
  const arms = armParts(form, arm, seenFrom, held);
  const places = {
    ...arm.places,
    ...legs.places,
    ...tail.places,
    ...headPlaces(form.head),
    ...earPlaces(form.head),
    ...trunkPlaces(form, seenFrom, arm.places, legs.ground),
    ...rulerBeside(form, [...arm.outline, ...legs.outline], legs.ground),
  };
  const trunkTop = [onHead(form.head, -0.4, 0.6), onHead(form.head, 0.4, 0.6)];
  return {
    parts: [
      groundUnder(0, legs.ground - 1, 1.35 * form.hipHalf),
      ...earParts(form.head, seenFrom),
      ...(seenFrom === 'front' ? tail.parts.map((part) => ({ ...part, points: otherSide(part.points) })) : []),
      ...arms.under,
      ...legs.under,
      ...trunkParts(form),
      ...(seenFrom === 'back' ? tail.parts : []),
      ...legs.over,
      ...arms.over,
      ...headParts(form.head, seenFrom),
      closed('arms-and-trunk', 'unseen', bothArms(arm.outline)),
    ],
    places,
    shots: {
      face: [...head, point(0, 6), ...earParts({ ...form.head, ears: 'top' }, 'front').flatMap(({ points }) => points)],
      head: [
        ...head,
        point(0, 22),
        point(-form.head.half - 14, form.head.chin.y),
        point(form.head.half + 14, form.head.chin.y),
      ],
      crown: [...head, ...(earParts(form.head, seenFrom)[0]?.points ?? [])],
      ear: earShot(form.head),
      shoulder: [point(0, form.head.chin.y - 12), point(form.chestHalf + 20, form.chestHeight + 10)],
      arm: [point(0, form.head.chin.y - 12), point(0, form.tummyHeight), ...arm.outline],
      band: [
        point(0, form.head.chin.y - 12),
        point(form.tummyHalf + 8, form.tummyHeight),
        point(-form.tummyHalf - 8, 0),
      ],
      chest: [
        point(0, form.head.chin.y - 12),
        point(form.chestHalf + 30, form.chestHeight + 18),
        point(-form.chestHalf - 30, 0),
      ],
      tummy: [
        point(form.tummyHalf + 6, form.chestHeight),
        point(-form.tummyHalf - 6, form.tummyHeight),
        point(0, form.trunkHeight + 4),
      ],
      lower: [
        point(form.hipHalf + 14, Math.min(form.waistHeight - 6, form.hemHeight - 20)),
        point(-form.hipHalf - 14, form.tummyHeight),
        point(0, legs.ground),
      ],
      trunk: [...trunk, ...trunkTop, point(0, Math.min(legs.ground, form.trunkHeight + 18))],
      legs: [...trunk.filter(({ y }) => y > 0.45 * form.trunkHeight), ...legs.outline, ...legs.outline.map(mirror)],
      skirt: [...trunkTop, point(0, legs.ground), places.skirtSide, places.skirtSideLeft],
      seat: [...trunk.filter(({ y }) => y > 0.35 * form.trunkHeight), point(0, legs.ground), ...tail.outline],
    },
    marks: marksOf(form, places, held),
  } satisfies Stage;
}

/** A ruler that stands beside the toy, clear of its limbs. */
function rulerBeside({ head }: UprightForm, limbs: readonly Point[], ground: number) {
  const x = Math.max(head.half, ...limbs.map((each) => each.x)) + 12;
  return { rulerTop: point(x, onHead(head, 0, 1).y), rulerTable: point(x, ground), table: point(0, ground) };
}

type Arm = ReturnType<typeof armOf>;

/** Arms at the back of the picture, but for arms held close, which stand before the trunk. */
function armParts(
  form: UprightForm,
  arm: Arm,
  seenFrom: 'front' | 'back',
  held: Held,
): { under: Part[]; over: Part[] } {
  const close = held === 'close';
  const look = close ? 'fur' : 'fur-deep';
  const arms = [closed('arm', look, arm.outline), closed('arm-left', look, otherSide(arm.outline))];
  if (close) return { under: [], over: arms };
  const pad = oval(arm.places.paw, 0.52 * form.pawHalf, 0.56 * form.pawHalf);
  const pads = [closed('pad', 'fur-pale', pad), closed('pad', 'fur-pale', pad.map(mirror))];
  return { under: held === 'forward' && seenFrom === 'front' ? [...arms, ...pads] : arms, over: [] };
}

/** What a tape round the body and both arms goes round: the outer edges of the arms, joined. */
function bothArms(arm: readonly Point[]): Point[] {
  const outer = arm.filter(({ x }, index) => index < arm.length / 2 && x > 0);
  return [...outer, ...outer.map(mirror).reverse()];
}

type Marked = { readonly [P in 'waist' | 'hem' | 'base' | 'shoulderEnd' | 'underarm' | 'armRoot']: Point };

function marksOf(form: UprightForm, { waist, hem, base, shoulderEnd, underarm, armRoot }: Marked, held: Held): Mark[] {
  const crease = point(0, form.traits.neck === 'clear' ? -1 : 3);
  const bothSides = (id: MarkId, at: Point): Mark[] => [
    { id, mark: 'patch', at, toward: armRoot },
    { id, mark: 'patch', at: mirror(at), toward: mirror(armRoot) },
  ];
  const arms = [...bothSides('shoulders', shoulderEnd), ...bothSides('underarms', underarm)];
  return [
    { id: 'neck', mark: 'thread', of: 'trunk', at: crease, toward: base, bow: true },
    { id: 'waist', mark: 'thread', of: 'trunk', at: waist, toward: base, bow: true },
    { id: 'hem', mark: 'thread', of: 'trunk', at: hem, toward: base, bow: true },
    ...(held === 'close' ? [] : arms),
  ];
}
