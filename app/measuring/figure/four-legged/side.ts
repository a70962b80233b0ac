import { bearing, moved, type Point, point, right } from '../../../body/point';
import { onSide, sideEar, sideFace, sideHead, sideHeadParts, sideHeadPlaces } from '../head/side';
import { across } from '../outline';
import { groundUnder, shadeOf } from '../shade';
import { limb, station } from '../shapes';
import { smoothPoints } from '../smooth';
import { closed, type Stage } from '../stage';
import type { FourLeggedForm } from './form';
import { sideLegs } from './legs';

/** Up the neck, toward the head. */
const UP_NECK = bearing({ x: 0.55, y: -0.83 });

/** A four-legged toy from its right side, its face to the viewer's right. */
export function fourLeggedSide(form: FourLeggedForm) {
  const trunk = sideTrunk(form);
  const legs = sideLegs(form);
  const tail = tailOf(form);
  const head = sideHead(form.head);
  const places = { ...sideHeadPlaces(form.head), ...legs.places, ...tail.places, ...trunkPlaces(form, trunk) };
  const { half, ground } = form;
  return {
    parts: [
      groundUnder(0, ground - 1, 1.45 * half),
      ...legs.far,
      ...(form.traits.tail ? [closed('tail', 'fur-deep', tail.outline)] : []),
      closed('trunk', 'fur', trunk),
      ...shadeOf(trunk, point(0.5 * half, 2 * form.chestHalf), point(-1.1 * half, 1.5 * form.bellyHalf), 9),
      ...legs.near,
      ...sideHeadParts(form.head),
      ...sideEar(form.head),
      ...sideFace(form.head),
    ],
    places,
    shots: {
      head: [...head, onSide(form.head, 1.35, 0.3), point(0.6 * half, 14), ...(sideEar(form.head)[0]?.points ?? [])],
      nape: [
        onSide(form.head, 0.9, 0.55),
        point(0, -40),
        point(-0.05 * half, 1.2 * form.chestHalf),
        point(1.35 * half, 20),
      ],
      leg: [point(0.2 * half, 10), point(1.3 * half, ground), ...legs.outline],
      trunk: [...trunk, point(0, ground), onSide(form.head, 0.4, 0.55)],
      tail: [...tail.outline, point(-0.45 * half, -12), point(-0.45 * half, 1.7 * form.bellyHalf)],
    },
    marks: [
      { id: 'neck', mark: 'thread', of: 'trunk', at: places.neckMiddle, toward: places.neckBase, bow: false },
      { id: 'legs', mark: 'patch', at: places.legTop, toward: places.legTopToward },
    ],
  } satisfies Stage;
}

const neckMiddle = ({ half }: FourLeggedForm): Point => point(half + 8, -15);

function sideTrunk(form: FourLeggedForm): Point[] {
  const { half, neckHalf } = form;
  const [chest, belly] = [2 * form.chestHalf, 2 * form.bellyHalf];
  const across = right(UP_NECK);
  const neck = neckMiddle(form);
  const top = moved(neck, UP_NECK, 26);
  return [
    point(-1.24 * half, 0.4 * belly),
    point(-1.1 * half, 0.09 * belly),
    point(-0.7 * half, -2),
    point(-0.1 * half, 1),
    point(0.46 * half, -3),
    moved(neck, across, -neckHalf),
    moved(top, across, -neckHalf),
    moved(top, across, neckHalf),
    moved(neck, across, neckHalf),
    point(1.16 * half, 0.44 * chest),
    point(0.95 * half, 0.86 * chest),
    point(0.4 * half, chest),
    point(-0.35 * half, belly),
    point(-0.85 * half, 0.97 * belly),
    point(-1.16 * half, 0.76 * belly),
  ];
}

/** Where tapes lie on neck, trunk and back. */
function trunkPlaces(form: FourLeggedForm, trunk: readonly Point[]) {
  const { half } = form;
  const dense = smoothPoints(trunk, true);
  const neck = neckMiddle(form);
  const top = (x: number) => across(dense, point(x, form.chestHalf), point(0, 1))[0];
  const under = (x: number) => across(dense, point(x, form.chestHalf), point(0, 1))[1];
  const coatEnd = top(-0.98 * half);
  const hem = under(Math.max(0.24 - 0.6 * form.underReach, -0.95) * half);
  const capeEnd = top(Math.max(0.6 - 0.85 * form.capeReach, -1) * half);
  return {
    neckMiddle: neck,
    neckBase: moved(neck, UP_NECK, -20),
    napeThread: across(dense, neck, right(UP_NECK))[0],
    chestRing: point(0.12 * half, form.chestHalf),
    bellyRing: point(-0.25 * half, form.bellyHalf),
    towardTail: point(-2 * half, form.chestHalf),
    towardTailBelly: point(-2 * half, form.bellyHalf),
    backMiddle: top(0),
    withers: top(0.5 * half),
    spineSide: point(0.5 * half, 0.3 * form.legTop),
    coatEnd,
    coatSide: point(coatEnd.x - 6, 0.9 * form.bellyHalf),
    coatLow: point(coatEnd.x + 4, 1.7 * form.bellyHalf),
    behindLegs: under(0.24 * half),
    bellyMiddle: under(-0.05 * half),
    underHem: hem,
    hemSide: point(hem.x - 6, form.bellyHalf),
    hemTop: top(hem.x),
    capeEnd,
    capeSide: point(capeEnd.x - 5, 0.9 * form.chestHalf),
    capeLow: point(capeEnd.x + 8, 1.55 * form.chestHalf),
  };
}

function tailOf(form: FourLeggedForm) {
  const { half, bellyHalf, tailHalf, tailThick } = form;
  const root = point(-1.16 * half, 0.42 * bellyHalf);
  const axis = [root, point(root.x - 24, root.y - 10), point(root.x - 38, root.y - 42)];
  const [base, thick] = [station(axis, 0.22), station(axis, 0.55)];
  return {
    outline: limb(axis, [tailHalf, tailThick, 0.45 * tailThick]),
    places: {
      tailBase: base.at,
      tailBaseToward: base.toward,
      tailThick: thick.at,
      tailThickToward: thick.toward,
    },
  };
}
