import type { Joint, Ringed, Step } from './chains';
import { angleBefore, type Half, type Side } from './halves';
import { type Sets, sets } from './sets';

/** A stretch of a side between two places where something else ends on it; corners are numbered over the whole surface. */
export type Stretch = {
  readonly half: Half;
  readonly side: Side;
  readonly from: number;
  readonly to: number;
};

/** A place where corners of pieces come together; `rim` where the surface ends there. */
export type Place = {
  readonly angle: number;
  readonly corners: readonly Corner[];
  readonly rim: readonly Stretch[];
  readonly seams: readonly string[];
};
type Corner = { readonly half: Half; readonly before: Side; readonly after: Side; readonly angle: number };

/** One connected surface: its halves, how many rims it has, how many handles (0: it could be drawn on a sheet of paper), its places. */
export type Surface = {
  readonly halves: readonly Half[];
  readonly rims: readonly (readonly Stretch[])[];
  readonly handles: number;
  readonly places: readonly Place[];
};

/** Nearer than this, two ends are the same place, mm: less is a matter of rounding, not of sewing. */
const SAME_MM = 0.3;

/** Glues halves along their folds and joints into surfaces; `badRings` are rings that are none. */
export function glue(
  halves: readonly Half[],
  joints: readonly Joint[],
  rings: readonly Ringed[],
): { readonly surfaces: readonly Surface[]; readonly badRings: readonly string[] } {
  const whole = [...joints, ...folds(halves)];
  const cuts = cutsOf(whole);
  const { stretches, corners } = cells(halves, cuts);
  const places = sets(corners.length);
  const bodies = sets(halves.length);
  const glued = new Map<number, string>();
  const at = new Map(halves.map((half, index) => [half, index]));
  const rows = stretchesBySide(stretches);
  for (const { seam, one, two } of whole) {
    const [ours, theirs] = [one, two].map((chain) => chain.flatMap((step) => walked(step, rows)));
    for (const [n, a] of (ours ?? []).entries()) {
      const b = theirs?.[n];
      const [left, right] = [stretches[a.index], b && stretches[b.index]];
      if (!left || !right || !b) continue;
      glued.set(a.index, seam.name);
      glued.set(b.index, seam.name);
      const alike = a.way === b.way;
      places.join(left.from, alike ? right.from : right.to);
      places.join(left.to, alike ? right.to : right.from);
      bodies.join(at.get(left.half) ?? 0, at.get(right.half) ?? 0);
    }
  }
  const sewn = new Set([...glued.keys()].map((index) => stretches[index]));
  const free = stretches.filter((stretch) => !sewn.has(stretch));
  const rims = rimsOf(free, places);
  const { closed, badRings } = closeRings(rings, rims, bodies, at);
  const surfaces = bodies.all().map((body): Surface => {
    const own = (half: Half) => bodies.of(at.get(half) ?? 0) === bodies.of(body[0] ?? 0);
    const inside = stretches.filter(({ half }) => own(half));
    const ownRims = rims.filter((rim) => !closed.has(rim) && rim.some(({ half }) => own(half)));
    const spots = placesOf(corners, places, own, stretches, glued);
    const shared = inside.filter((stretch) => sewn.has(stretch)).length / 2;
    const lines = inside.length - shared;
    const euler = spots.length - lines + body.length;
    return { halves: halves.filter(own), rims: ownRims, places: spots, handles: (2 - euler - ownRims.length) / 2 };
  });
  return { surfaces, badRings };
}

const FOLD = { name: 'fold' } as Joint['seam'];

/** Both halves of a piece on the fold are one piece of cloth. */
function folds(halves: readonly Half[]): Joint[] {
  return halves
    .filter((half) => half.piece.onFold && half.hand === 1)
    .flatMap((half) => {
      const other = halves.find((each) => each.piece === half.piece && each.copy === half.copy && each.hand === -1);
      const step = (which: Half, side: Side): Step => ({ half: which, side: side.name, way: 1 });
      return half.sides
        .filter((side) => side.role === 'fold')
        .flatMap((side) => (other ? [{ seam: FOLD, one: [step(half, side)], two: [step(other, side)] }] : []));
    });
}

const keyOf = (half: Half, side: string) => `${half.piece.name} ${half.copy} ${half.hand} ${side}`;
const sideOf = ({ half, side }: Step) => half.sides.find((each) => each.name === side);

/** Where sides are cut by the ends of what is sewn along them, mm from their own starts. */
function cutsOf(joints: readonly Joint[]): ReadonlyMap<string, readonly number[]> {
  const cuts = new Map<string, number[]>();
  for (const { one, two } of joints) {
    const [ours, theirs] = [one, two].map(sharesOf);
    // A stretched strip is shorter than its edge: what is one place on either is one on both.
    const near = SAME_MM / Math.max(lengthOf(one), lengthOf(two));
    mark(one, ours ?? [], theirs ?? [], near, cuts);
    mark(two, theirs ?? [], ours ?? [], near, cuts);
  }
  return cuts;
}

const lengthOf = (chain: readonly Step[]) => chain.reduce((sum, step) => sum + (sideOf(step)?.length ?? 0), 0);

/** Where along a chain its sides end, as shares of it. */
function sharesOf(chain: readonly Step[]): number[] {
  const whole = lengthOf(chain);
  let walkedSoFar = 0;
  return chain.map((step) => {
    walkedSoFar += sideOf(step)?.length ?? 0;
    return walkedSoFar / whole;
  });
}

function mark(
  chain: readonly Step[],
  own: readonly number[],
  others: readonly number[],
  near: number,
  cuts: Map<string, number[]>,
): void {
  const whole = lengthOf(chain);
  for (const share of others.slice(0, -1)) {
    if (own.some((each) => Math.abs(each - share) < near)) continue;
    const at = own.findIndex((each) => share < each);
    const step = chain[at];
    const side = step && sideOf(step);
    if (!step || !side) continue;
    const into = (share - (own[at - 1] ?? 0)) * whole;
    const key = keyOf(step.half, step.side);
    cuts.set(key, [...(cuts.get(key) ?? []), step.way > 0 ? into : side.length - into]);
  }
}

function cells(halves: readonly Half[], cuts: ReadonlyMap<string, readonly number[]>) {
  const stretches: Stretch[] = [];
  const corners: Corner[] = [];
  for (const half of halves) {
    const first = corners.length;
    const parts = half.sides.flatMap((side, n) => {
      const between = cuts.get(keyOf(half, side.name))?.length ?? 0;
      return Array.from({ length: between + 1 }, (_, part) => ({
        side,
        before: part === 0 ? (half.sides[(n + half.sides.length - 1) % half.sides.length] ?? side) : side,
        angle: part === 0 ? angleBefore(half.sides, n) : Math.PI,
      }));
    });
    parts.forEach(({ side, before, angle }, n) => {
      corners.push({ half, before, after: side, angle });
      stretches.push({ half, side, from: first + n, to: first + ((n + 1) % parts.length) });
    });
  }
  return { stretches, corners };
}

function stretchesBySide(stretches: readonly Stretch[]): ReadonlyMap<string, readonly number[]> {
  const rows = new Map<string, number[]>();
  stretches.forEach(({ half, side }, index) => {
    const key = keyOf(half, side.name);
    rows.set(key, [...(rows.get(key) ?? []), index]);
  });
  return rows;
}

function walked(
  { half, side, way }: Step,
  rows: ReadonlyMap<string, readonly number[]>,
): { index: number; way: 1 | -1 }[] {
  const row = rows.get(keyOf(half, side)) ?? [];
  return (way > 0 ? row : [...row].reverse()).map((index) => ({ index, way }));
}

/** Free stretches that follow each other round a rim. */
function rimsOf(free: readonly Stretch[], places: Sets): Stretch[][] {
  const runs = sets(free.length);
  const seen = new Map<number, number>();
  free.forEach(({ from, to }, index) => {
    for (const corner of [from, to]) {
      const place = places.of(corner);
      const other = seen.get(place);
      if (other === undefined) seen.set(place, index);
      else runs.join(index, other);
    }
  });
  return runs.all().map((run) => run.flatMap((index) => free[index] ?? []));
}

/** Two rims sewn to each other all round. */
function closeRings(
  rings: readonly Ringed[],
  rims: readonly (readonly Stretch[])[],
  bodies: Sets,
  at: ReadonlyMap<Half, number>,
) {
  const closed = new Set<readonly Stretch[]>();
  const badRings: string[] = [];
  for (const { seam, one, two } of rings) {
    const found = [one, two].map((steps) => {
      const wanted = new Set(steps.map((step) => keyOf(step.half, step.side)));
      return rims.find(
        (rim) => rim.length === wanted.size && rim.every(({ half, side }) => wanted.has(keyOf(half, side.name))),
      );
    });
    const [ours, theirs] = found;
    if (!ours || !theirs) {
      badRings.push(seam.name);
      continue;
    }
    closed.add(ours).add(theirs);
    bodies.join(at.get(ours[0]?.half as Half) ?? 0, at.get(theirs[0]?.half as Half) ?? 0);
  }
  return { closed, badRings };
}

function placesOf(
  corners: readonly Corner[],
  places: Sets,
  own: (half: Half) => boolean,
  stretches: readonly Stretch[],
  glued: ReadonlyMap<number, string>,
): Place[] {
  const byPlace = new Map<number, { corners: Corner[]; rim: Stretch[]; seams: Set<string> }>();
  corners.forEach((corner, index) => {
    if (!own(corner.half)) return;
    const place = byPlace.get(places.of(index)) ?? { corners: [], rim: [], seams: new Set<string>() };
    place.corners.push(corner);
    byPlace.set(places.of(index), place);
  });
  stretches.forEach((stretch, index) => {
    for (const corner of [stretch.from, stretch.to]) {
      const place = byPlace.get(places.of(corner));
      const seam = glued.get(index);
      if (seam) place?.seams.add(seam);
      else place?.rim.push(stretch);
    }
  });
  return [...byPlace.values()].map(({ seams, ...place }) => ({
    ...place,
    seams: [...seams],
    angle: place.corners.reduce((sum, corner) => sum + corner.angle, 0),
  }));
}
