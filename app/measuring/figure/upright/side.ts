import { add, heading, lerp, moved, type Point, point, right, toward } from '../../../body/point';
import { onSide, sideEar, sideFace, sideHead, sideHeadParts, sideHeadPlaces } from '../head/side';
import { groundUnder, shadeOf } from '../shade';
import { limb, oval } from '../shapes';
import { closed, type Part, type Stage } from '../stage';
import type { Held } from './arm';
import type { UprightForm } from './form';
import { sideTailOf } from './tail';

/** As its own arms are, or lifted out of the tape's way. */
export type SideHeld = Held | 'lifted';

/** Radians below level toward the face; an arm held out points at the viewer, so it is drawn short. */
const BELOW = { down: 1.25, out: 1.2, forward: 0.28, up: -1.05, close: 1.4, lifted: -0.42 } as const;
const SHORTENED = { down: 0.92, out: 0.5, forward: 0.95, up: 0.95, close: 0.95, lifted: 0.92 } as const;

/** A tape round the lap reaches this far beyond the toy, in toy units. */
const LAP_ROOM = 8;

/** An upright toy from its left side, its face to the viewer's right. */
export function uprightSide(form: UprightForm, held: SideHeld = form.traits.arms) {
  const trunk = sideTrunk(form);
  const arm = sideArm(form, held);
  const leg = sideLeg(form);
  const head = sideHead(form.head);
  const tail = sideTailOf(form);
  const places = {
    ...sideHeadPlaces(form.head),
    ...trunkPlaces(form, leg.ground),
    ...lapPlaces(form),
    ...leg.places,
  };
  const crease = point(0, form.traits.neck === 'clear' ? -1 : 3);
  return {
    parts: [
      groundUnder(14, leg.ground - 1, 1.3 * form.tummyHalfDepth),
      ...tail.parts,
      ...leg.under,
      closed('trunk', 'fur', trunk),
      ...shadeOf(trunk, point(-0.9 * form.tummyHalfDepth, form.chestHeight), point(-10, form.trunkHeight), 8),
      ...leg.over,
      closed('arm', 'fur-deep', arm),
      ...sideHeadParts(form.head),
      ...sideEar(form.head),
      ...sideFace(form.head),
      footLoop(leg.places),
    ],
    places,
    shots: {
      head: [...head, onSide(form.head, 1.25, 0.3), point(0, 18), ...(sideEar(form.head)[0]?.points ?? [])],
      trunk: [...trunk, point(0, form.head.chin.y - 30), ...arm],
      seat: [...trunk, places.tableBehind, places.tableBefore, onSide(form.head, 0, 0.3)],
      lap: [
        ...trunk.filter(({ y }) => y > 0.4 * form.trunkHeight),
        ...leg.outline,
        moved(places.lapBack, point(-1, 1), LAP_ROOM),
        moved(places.lapFront, point(1, -1), LAP_ROOM),
        moved(places.lapHem, point(0, -1), 3 * LAP_ROOM),
      ],
      leg: [...leg.outline, point(0, form.tummyHeight), ...footLoop(leg.places).points],
    },
    marks: [
      { id: 'neck', mark: 'thread', of: 'trunk', at: crease, toward: places.base, bow: false },
      { id: 'waist', mark: 'thread', of: 'trunk', at: places.waist, toward: places.base, bow: false },
      { id: 'hood', mark: 'patch', at: places.hoodTop, toward: places.hoodBrow },
      { id: 'hood', mark: 'patch', at: places.hoodEdge, toward: places.hoodCheek },
      { id: 'sides', mark: 'side-line', from: places.underarm, to: places.sideHem },
    ],
  } satisfies Stage;
}

/** Where tapes lie on the trunk from the side. */
function trunkPlaces(form: UprightForm, ground: number) {
  const { tummyHalfDepth: deep } = form;
  const behind = -1.2 * deep;
  return {
    base: point(0, form.trunkHeight),
    waist: point(0, form.waistHeight),
    underarm: point(-2, form.chestHeight + 3),
    sideWaist: point(-2, form.waistHeight + 0.19 * deep),
    sideMiddle: point(-2, (form.chestHeight + form.sideHem) / 2),
    hem: point(0, form.sideHem),
    sideHem: point(-2, form.sideHem + 0.17 * deep),
    waistOnSide: point(-2, form.waistHeight + 0.19 * deep),
    tableUnderSide: point(-2, ground),
    tableBehind: point(behind, ground),
    tableBefore: point(1.5 * deep, ground),
  };
}

/** Seated, a tape round hem or seat lies low behind and above the legs in front. */
function lapPlaces({ hipHalfDepth: deep, trunkHeight, hemHeight, hipHeight, legHalf }: UprightForm) {
  const lap = trunkHeight - 20 - 1.15 * legHalf;
  const ring = (behind: number) => {
    const [back, front] = [point(-0.86 * deep, behind), point(deep, Math.min(behind, lap))];
    const at = lerp(back, front, 0.5);
    return { at, toward: add(at, right(toward(back, front))), back, front };
  };
  const [hem, hip] = [ring(hemHeight - 4), ring(hipHeight + 2)];
  return {
    lapHem: hem.at,
    lapHemToward: hem.toward,
    lapHip: hip.at,
    lapHipToward: hip.toward,
    lapBack: hip.back,
    lapFront: hem.front,
  };
}

function sideTrunk(form: UprightForm): Point[] {
  const { trunkHeight: height, tummyHalfDepth: deep, hipHalfDepth: seat, chestHalfDepth: chest } = form;
  const neck = 0.86 * form.neckHalf;
  return [
    point(neck, -14),
    point(neck + 1, 0),
    point(0.86 * chest, 0.28 * height),
    point(1.06 * deep, form.tummyHeight),
    point(0.86 * seat, 0.9 * height),
    point(0.3 * seat, height),
    point(-0.5 * seat, 0.99 * height),
    point(-0.86 * seat, 0.86 * height),
    point(-0.86 * deep, 0.6 * height),
    point(-0.84 * chest, 0.28 * height),
    point(-neck - 2, 0),
    point(-neck, -14),
  ];
}

function sideArm(form: UprightForm, held: SideHeld): Point[] {
  const root = point(-2, form.shoulderHeight + 0.95 * form.armRootHalf);
  const ahead = heading(BELOW[held]);
  const length = Math.max(form.armLength * SHORTENED[held] - form.pawHalf, 10);
  const elbow = moved(root, heading(BELOW[held] + 0.1), 0.5 * length);
  return limb([root, elbow, moved(root, ahead, length)], [form.armRootHalf, form.upperArmHalf, form.pawHalf]);
}

function sideLeg(form: UprightForm) {
  const { legHalf, legLength, footHalf, footLong, trunkHeight } = form;
  const top = trunkHeight - 18;
  if (form.traits.posture === 'stands') {
    const ankle = point(0, top + legLength);
    const outline = limb([point(0, top), point(1, top + 0.5 * legLength), ankle], [1.2 * legHalf, legHalf, footHalf]);
    const foot = oval(
      point(ankle.x - 0.85 * footHalf + 1.35 * footLong, ankle.y + 8),
      1.35 * footLong,
      0.72 * footHalf,
    );
    const ground = ankle.y + 8 + 0.72 * footHalf;
    const instep = point(ankle.x + 0.92 * footHalf, ankle.y - 4);
    const heel = point(ankle.x - 0.7 * footHalf, ground - 3);
    const parts = [closed('leg', 'fur-deep', outline), closed('foot', 'fur', foot)];
    return {
      under: parts,
      over: [] as Part[],
      outline: [...outline, ...foot],
      ground,
      places: {
        ...footPlaces(instep, heel),
        ...rulerAlong(
          [
            point(ankle.x - 0.85 * footHalf, ankle.y + 8),
            point(ankle.x - 0.85 * footHalf + 2.7 * footLong, ankle.y + 8),
          ],
          (at) => point(at.x, ground + 1),
        ),
      },
    };
  }
  const foot = point(14 + legLength, top + 1);
  const outline = limb([point(8, top - 1), point(0.55 * foot.x, top), foot], [1.15 * legHalf, legHalf, 0.9 * footHalf]);
  const sole = oval(
    point(foot.x + 0.45 * footHalf, foot.y - 3 + 1.24 * (footHalf - footLong)),
    0.72 * footHalf,
    1.24 * footLong,
    0.08,
  );
  const instep = point(foot.x - 0.2 * footHalf, foot.y - 0.92 * footHalf);
  const heel = point(foot.x + 0.5 * footHalf, foot.y + 1.1 * footHalf);
  const parts = [closed('leg', 'fur-deep', outline), closed('foot', 'fur', sole)];
  const ground = Math.max(trunkHeight, foot.y + 1.2 * footHalf);
  const [ahead, low] = [foot.x + 1.2 * footHalf, foot.y - 3 + 1.24 * footHalf];
  const places = {
    ...footPlaces(instep, heel),
    ...rulerAlong(
      [point(foot.x + 0.45 * footHalf, low), point(foot.x + 0.45 * footHalf, low - 2.48 * footLong)],
      (at) => point(ahead, at.y),
    ),
  };
  return { under: [] as Part[], over: parts, outline: [...outline, ...sole], ground, places };
}

/** Over the instep and under the heel: the middle of that loop, and the way it faces. */
function footPlaces(instep: Point, heel: Point) {
  const middle = lerp(instep, heel, 0.5);
  return { instep, heel, footMiddle: middle, footToward: add(middle, right(toward(heel, instep))) };
}

/** Heel and toes, and where a ruler along the sole is read at either. */
function rulerAlong([heelEnd, toeEnd]: readonly [Point, Point], beside: (at: Point) => Point) {
  return { heelEnd, toeEnd, soleHeel: beside(heelEnd), soleToe: beside(toeEnd) };
}

/** What a tape over instep and heel goes round. */
const footLoop = ({ instep, heel }: { instep: Point; heel: Point }) =>
  closed('foot-loop', 'unseen', limb([lerp(instep, heel, 0.12), lerp(instep, heel, 0.88)], [10, 10]));
