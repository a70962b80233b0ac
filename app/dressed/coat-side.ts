import { lerp, moved, type Point, point, toward } from '../body/point';
import { across, along, type Part, type Stage, smoothPoints } from '../measuring/figure';
import { cloth, corner, drawnSeam, fold, stitches } from './cloth';
import type { Coat } from './clothes';

/** How far down the side a flat coat reaches, and where its band goes round behind the front legs (shares of the trunk and of the way along it). */
const DOWN = 0.62;
const BAND_AT = 0.6;
/** A collar stands so high along the neck, in the figure's units. */
const COLLAR = 8;
/** Round a leg's root a hole is drawn so much wider than the leg. */
const HOLE = 1.25;

/** A coat on a four-legged toy from its side: what lies over its trunk and under its near legs, over its front leg, over its head. */
export type CoatFromSide = { readonly trunk: Part[]; readonly legs: Part[]; readonly head: Part[] };

/** Places that a stage seen from the side has, and one seen from an end has not. */
const PLACES = [
  'napeThread',
  'neckMiddle',
  'neckBase',
  'backMiddle',
  'coatEnd',
  'behindLegs',
  'underHem',
  'legTop',
] as const;
type Places = Readonly<Record<(typeof PLACES)[number], Point>>;

/** `down`: mm in the figure's units. Nothing where the toy is seen from an end. */
export function coatFromSide(
  coat: Coat & { readonly hood: boolean },
  stage: Stage,
  down: (mm: number) => number,
): CoatFromSide {
  const trunk = stage.parts.find(({ name }) => name === 'trunk');
  if (!trunk || !PLACES.every((name) => stage.places[name])) return { trunk: [], legs: [], head: [] };
  const places = stage.places as Places;
  const body = smoothPoints(trunk.points, true);
  const throat = throatOf(body, places);
  const back = along(body, places.napeThread, places.coatEnd, places.backMiddle);
  const worn = { coat, stage, places, body, throat, back };
  return {
    trunk: [
      ...(coat.flat ? overBack(worn, down(coat.tab)) : round(worn)),
      ...(coat.collar ? [collar(places, throat)] : []),
    ],
    legs: coat.flat ? [] : frontLeg(stage, places, down(coat.sleeve)),
    head: coat.hood ? hood(stage, places, throat) : [],
  };
}

type Worn = {
  readonly coat: Coat;
  readonly stage: Stage;
  readonly places: Places;
  readonly body: readonly Point[];
  readonly throat: Point;
  readonly back: readonly Point[];
};

/** Across the neck from its thread at the nape. */
function throatOf(body: readonly Point[], { napeThread, neckMiddle }: Places): Point {
  const ends = across(body, neckMiddle, toward(napeThread, neckMiddle));
  return ends[1];
}

/** Back and belly, down to a hem before the hind legs; its side seam runs through the front leg. */
function round({ coat, places, body, throat, back }: Worn): Part[] {
  const { coatEnd, underHem, behindLegs, legTop } = places;
  const hem = [coatEnd, point((coatEnd.x + underHem.x) / 2 - 5, (coatEnd.y + underHem.y) / 2), underHem];
  const under = along(body, underHem, throat, behindLegs);
  const seam = [lerp(places.napeThread, throat, 0.62), legTop, lerp(hem[1] as Point, underHem, 0.35)];
  const inner = hem.map(({ x, y }) => point(x + 4, y));
  return [
    cloth([
      ...corner(back[0] as Point),
      ...back,
      ...corner(coatEnd),
      ...hem.slice(1, -1),
      ...corner(underHem),
      ...under,
      ...corner(throat),
    ]),
    drawnSeam(seam),
    stitches(inner),
    ...closing(coat.opens === 'back' ? back : under),
  ];
}

/** Short lines across the edge where it opens. */
function closing(edge: readonly Point[]): Part[] {
  return [0.3, 0.45, 0.6, 0.75].flatMap((share) => {
    const at = edge[Math.round(share * (edge.length - 1))];
    const next = edge[Math.round(share * (edge.length - 1)) + 1];
    if (!at || !next) return [];
    const way = toward(at, next);
    return [fold([at, moved(at, { x: -way.y, y: way.x }, 6)])];
  });
}

/** A flat back, a tab before the chest, and the band under the belly. */
function overBack({ places, body, throat, back }: Worn, wide: number): Part[] {
  const { coatEnd, napeThread, backMiddle, behindLegs } = places;
  const middle = lerp(backMiddle, behindLegs, 0.5).y;
  const alongBack = (share: number) => napeThread.x + (coatEnd.x - napeThread.x) * share;
  const level = (x: number, share: number) => {
    const [top, low] = across(body, point(x, middle), point(0, 1));
    return lerp(top, low, share);
  };
  const hem = [0.98, 0.75, 0.5, 0.22].map((share) => level(alongBack(share), share > 0.9 ? 0.9 * DOWN : DOWN));
  const chest = lerp(throat, level(throat.x, 1), 0.3);
  const tab = [point(chest.x + 3, chest.y + wide), chest, throat];
  const shape = [...corner(back[0] as Point), ...back, ...corner(coatEnd), ...hem, ...tab.flatMap(corner)];
  const half = Math.max(0.4 * wide, 4);
  const at = alongBack(BAND_AT);
  const [top, low] = [level(at, DOWN - 0.08).y, level(at, 1).y + 1];
  const band = [point(at - half, top), point(at + half, top), point(at + half, low), point(at - half, low)];
  return [cloth(band.flatMap(corner)), cloth(shape), stitches(hem.map(({ x, y }) => point(x, y - 4)))];
}

/** The hole round the leg's root, or a sleeve down the leg. */
function frontLeg(stage: Stage, { legTop }: Places, long: number): Part[] {
  const leg = stage.parts.find(({ name }) => name === 'front-leg');
  if (!leg) return [];
  const ring = smoothPoints(leg.points, true);
  const foot = stage.places.foot ?? legTop;
  const way = toward(legTop, foot);
  const side = { x: -way.y, y: way.x };
  const cut = (reach: number) => across(ring, moved(legTop, way, reach), side);
  const all = Math.hypot(foot.x - legTop.x, foot.y - legTop.y);
  const [near, far] = cut(0.35 * all);
  const wide = Math.hypot(near.x - far.x, near.y - far.y) / 2;
  const top = [moved(near, side, -(HOLE - 1) * wide), moved(legTop, way, -2), moved(far, side, (HOLE - 1) * wide)];
  if (long <= 0) return [stitches(top)];
  const end = cut(Math.min(0.35 * all + long, 0.95 * all));
  const sleeve = [...top, ...corner(moved(end[1], side, 2)), ...corner(moved(end[0], side, -2))];
  return [cloth(sleeve), stitches([...end].map((at) => moved(at, way, -4)))];
}

/** A band up the neck from its thread. */
function collar({ napeThread, neckMiddle, neckBase }: Places, throat: Point): Part {
  const up = toward(neckBase, neckMiddle);
  return cloth([napeThread, throat, moved(throat, up, COLLAR), moved(napeThread, up, COLLAR)].flatMap(corner));
}

/** Over the head behind the line of its face, down to the neck. */
function hood({ parts, places: all }: Stage, { napeThread }: Places, throat: Point): Part[] {
  const head = parts.find(({ name }) => name === 'head');
  const { hoodTop, hoodBrow, hoodEdge, hoodCheek, hoodChin, headBack } = all;
  if (!head || !hoodTop || !hoodBrow || !hoodEdge || !hoodCheek || !hoodChin || !headBack) return [];
  const behind = along(smoothPoints(head.points, true), hoodTop, headBack, headBack).map(({ x, y }) =>
    point(x - 2, y - 2.5),
  );
  const face = [hoodChin, hoodCheek, hoodEdge, hoodBrow];
  const shape = [
    ...corner(behind[0] as Point),
    ...behind,
    ...corner(point(napeThread.x - 1, napeThread.y)),
    ...corner(throat),
    ...face,
  ];
  return [cloth(shape), stitches(face.map(({ x, y }) => point(x - 4, y)))];
}
