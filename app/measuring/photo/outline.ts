// The outline of what lies in the card's plane, corner by corner, with how far off it may be.

import type { Mm } from '../../body';
import { add, cross, dot, rotate, scale, subtract } from '../../body/point';
import { type Fit, slopesOf } from './fit';
import { solveLinear } from './linear';
import { GIVE_SPREADS, type SeenPlane } from './plane';
import type { Spot } from './space';
import { laidOn, type View } from './view';

/** Its corners in order, x along the thread, from the least of each, mm; `give`: none lies farther off than this, nine times in ten. */
export type SeenOutline = { readonly corners: readonly Spot[]; readonly give: Mm; readonly thread: Mm };

/** How far the taps of a slope are nudged, px. */
const NUDGE_PX = 0.5;

/**
 * What lies at corners tapped in order and which way its thread runs, from the first of two taps to the second (px from
 * the picture's upper left). Null where something lies beyond the plane's horizon.
 */
export function outlineOn(
  plane: SeenPlane,
  corners: readonly Spot[],
  thread: readonly [Spot, Spot],
): SeenOutline | null {
  const taps: readonly Spot[] = [...corners, ...thread].map((tap) => subtract(tap, plane.middle));
  const [likeliest] = [...plane.fits].sort((a, b) => b.share - a.share);
  const first = likeliest && laid(likeliest.view, taps);
  if (!first || plane.fits.some(({ view }) => !laid(view, taps))) return null;
  const count = corners.length;
  const read = (view: View, from = taps) => onto(first, laid(view, from) ?? first, count);
  const ways = plane.fits.map((fit) => ({
    fit,
    spots: read(fit.view),
    moves: movesOf(fit, taps, plane.tap, read),
  }));
  const middle = first.map((_, at) =>
    ways.reduce((sum, { fit, spots }) => add(sum, scale(nth(spots, at), fit.share)), { x: 0, y: 0 }),
  );
  const spreads = corners.map((_, at) =>
    ways.reduce((all, { fit, spots, moves }) => {
      const apart = subtract(nth(spots, at), nth(middle, at));
      return [apart, ...moves.map((move) => nth(move, at))].reduce((sum, off) => plus(sum, off, fit.share), all);
    }, NO_SPREAD),
  );
  const along = subtract(nth(middle, count + 1), nth(middle, count));
  const turned = middle.slice(0, count).map((spot) => rotate(spot, -Math.atan2(along.y, along.x)));
  const [left, top] = [Math.min(...turned.map(({ x }) => x)), Math.min(...turned.map(({ y }) => y))];
  return {
    corners: turned.map(({ x, y }) => ({ x: x - left, y: y - top })),
    give: GIVE_SPREADS * Math.sqrt(Math.max(...spreads.map(widest))),
    thread: Math.hypot(along.x, along.y),
  };
}

/** One of as many spots as there were taps. */
const nth = (spots: readonly Spot[], at: number): Spot => spots[at] ?? { x: 0, y: 0 };

function laid(view: View, taps: readonly Spot[]): readonly Spot[] | null {
  const spots = taps.flatMap((tap) => laidOn(view, tap) ?? []);
  return spots.length === taps.length ? spots : null;
}

/** Spots laid on others, so that the first `count` lie as near as may be: only their shape differs then (Kendall 1984). */
function onto(others: readonly Spot[], spots: readonly Spot[], count: number): readonly Spot[] {
  const [to, from] = [middleOf(others.slice(0, count)), middleOf(spots.slice(0, count))];
  const pairs = spots
    .slice(0, count)
    .map((spot, at) => [subtract(spot, from), subtract(others[at] ?? to, to)] as const);
  const turn = Math.atan2(
    pairs.reduce((sum, [a, b]) => sum + cross(a, b), 0),
    pairs.reduce((sum, [a, b]) => sum + dot(a, b), 0),
  );
  return spots.map((spot) => add(to, rotate(subtract(spot, from), turn)));
}

const middleOf = (spots: readonly Spot[]): Spot => scale(spots.reduce(add, { x: 0, y: 0 }), 1 / spots.length);

/** How all corners move together for each thing that is loose, by one standard deviation: the view, then every tap. */
function movesOf(
  fit: Fit,
  taps: readonly Spot[],
  tap: number,
  read: (view: View, from?: readonly Spot[]) => readonly Spot[],
): readonly (readonly Spot[])[] {
  const slopes = slopesOf((view) => read(view).flatMap(({ x, y }) => [x, y]), fit.view);
  const ofView = rootOf(fit.hold).map((row) =>
    taps.map((_, at) => ({
      x: row.reduce((sum, part, k) => sum + part * (slopes[k]?.[2 * at] ?? 0), 0),
      y: row.reduce((sum, part, k) => sum + part * (slopes[k]?.[2 * at + 1] ?? 0), 0),
    })),
  );
  const nudges = [
    { x: NUDGE_PX, y: 0 },
    { x: 0, y: NUDGE_PX },
  ];
  const ofTaps = taps.flatMap((_, which) =>
    nudges.map((nudge) => {
      const nudged = (sign: number) =>
        read(
          fit.view,
          taps.map((spot, at) => (at === which ? add(spot, scale(nudge, sign)) : spot)),
        );
      const [after, before] = [nudged(1), nudged(-1)];
      return after.map((spot, at) => scale(subtract(spot, before[at] ?? spot), tap / (2 * NUDGE_PX)));
    }),
  );
  return [...ofView, ...ofTaps];
}

/** Rows whose products with themselves add up to the inverse of a positive matrix (Cholesky's). */
function rootOf(hold: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const inverse = hold.map(
    (_, k) =>
      solveLinear(
        hold,
        hold.map((_, i) => (i === k ? 1 : 0)),
      ) ?? hold.map(() => 0),
  );
  const root: number[][] = hold.map(() => hold.map(() => 0));
  for (const [i, row] of root.entries())
    for (let j = 0; j <= i; j++) {
      const other = root[j] ?? row;
      const rest = (inverse[i]?.[j] ?? 0) - row.slice(0, j).reduce((sum, part, k) => sum + part * (other[k] ?? 0), 0);
      row[j] = i === j ? Math.sqrt(Math.max(0, rest)) : (other[j] ?? 0) > 0 ? rest / (other[j] ?? 1) : 0;
    }
  return hold.map((_, k) => root.map((row) => row[k] ?? 0));
}

/** How a spot scatters: variances and covariance, mm². */
type Spread = { readonly xx: number; readonly xy: number; readonly yy: number };

const NO_SPREAD: Spread = { xx: 0, xy: 0, yy: 0 };

const plus = ({ xx, xy, yy }: Spread, { x, y }: Spot, share: number): Spread => ({
  xx: xx + share * x * x,
  xy: xy + share * x * y,
  yy: yy + share * y * y,
});

/** The variance in the direction in which it is largest, mm². */
const widest = ({ xx, xy, yy }: Spread): number => (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
