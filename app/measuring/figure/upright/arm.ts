import type { Traits } from '../../../body';
import { dot, heading, lerp, mirror, moved, type Point, point, right, subtract, toward } from '../../../body/point';
import { across, crossings } from '../outline';
import { limb, station } from '../shapes';
import { smoothPoints } from '../smooth';
import type { UprightForm } from './form';

/** How an arm is held: as the toy's own arms are, or close to the body for a tape round both. */
export type Held = Traits['arms'] | 'close';

/** Radians below level; an arm held forward is seen from its end, so it is drawn short. */
const BELOW = { down: 0.62, out: 0.06, forward: 0.5, up: -0.72, close: 1.2 } as const;
const SHORTENED = { down: 1, out: 1, forward: 0.6, up: 1, close: 1 } as const;

/** Where a sleeve ends, as a share of the arm. */
const CUFF_AT = 0.8;

/** How much farther out arms held close are when more goes round them, radians for twice as much. */
const SPREAD = 0.5;

/** The arm at the viewer's right, seen from the front or the back: its outline, axis, and where it meets the trunk. */
export function armOf(form: UprightForm, trunk: readonly Point[], held: Held) {
  const { armRootHalf, upperArmHalf, pawHalf } = form;
  const length = form.armLength * SHORTENED[held];
  const ahead = heading(BELOW[held] - (held === 'close' ? SPREAD * (form.overArms - 1) : 0));
  const root = rootOf(form);
  const reach = Math.max(length - pawHalf, 12);
  const sag = right(ahead);
  const axis = [root, moved(moved(root, ahead, 0.5 * reach), sag, -0.05 * reach), moved(root, ahead, reach)];
  const swell = held === 'forward' ? 1.25 : 1;
  const outline = limb(axis, [armRootHalf, upperArmHalf, pawHalf * swell]);
  const places = placesOf(axis, smoothPoints(outline, true), smoothPoints(trunk, true), sag);
  return { outline, axis, places };
}

/** Where the arm joins: at the corner of the trunk, or set flat on its side, lower. */
function rootOf({ traits, armRootHalf, shoulderHalf, shoulderHeight, chestHalf, chestHeight }: UprightForm): Point {
  if (traits.limbs === 'below') return point(shoulderHalf - 8, shoulderHeight + 0.8 * armRootHalf);
  return point(
    Math.min(shoulderHalf, chestHalf) - 4,
    Math.max(shoulderHeight + 0.8 * armRootHalf, chestHeight - 0.4 * armRootHalf),
  );
}

/** The arm at the viewer's left. */
export const otherSide = (points: readonly Point[]): Point[] => points.map(mirror);

function placesOf(axis: readonly Point[], outline: readonly Point[], trunk: readonly Point[], sag: Point) {
  const root = axis[0] ?? point(0, 0);
  const met = crossings(trunk, outline).filter(({ x }) => x > 0);
  const sorted = met.sort((a, b) => dot(subtract(a, root), sag) - dot(subtract(b, root), sag));
  const armRoot = station(axis, 0.26);
  const upperArm = station(axis, 0.5);
  const paw = station(axis, 0.93);
  const hem = station(axis, CUFF_AT);
  const cuff = edges(outline, axis, CUFF_AT);
  const elbow = edges(outline, axis, 0.45);
  const near = edges(outline, axis, 0.2);
  const shoulderEnd = sorted[0] ?? near.outer;
  const underarm = sorted.length > 1 ? (sorted.at(-1) ?? near.inner) : near.inner;
  return {
    armRoot: armRoot.at,
    armRootToward: armRoot.toward,
    upperArm: upperArm.at,
    upperArmToward: upperArm.toward,
    paw: paw.at,
    pawToward: paw.toward,
    cuff: hem.at,
    cuffToward: hem.toward,
    cuffOuter: cuff.outer,
    cuffInner: cuff.inner,
    elbowOuter: elbow.outer,
    elbowInner: elbow.inner,
    shoulderEnd,
    shoulderEndLeft: mirror(shoulderEnd),
    underarm,
  };
}

/** Just inside both edges of the arm at a share `t` of its axis. */
function edges(outline: readonly Point[], axis: readonly Point[], t: number) {
  const { at, toward: next } = station(axis, t);
  const [outer, inner] = across(outline, at, right(toward(at, next)));
  return { outer: lerp(outer, at, 0.16), inner: lerp(inner, at, 0.16) };
}
