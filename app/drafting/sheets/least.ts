import { mayShare, stockOf } from '../packing';
import type { Area } from './area';
import type { Fitting } from './figure';
import { shapeOfItem } from './shapes';

/** Shifts are tried this finely, mm: the grid's half diagonal and the slack of both outlines are less than the gap. */
const STEP_MM = 2.5;

/** A half turn, less a hair. */
const HALF_TURN = Math.PI - 1e-9;

/** How far apart the shapes are kept, mm: a hair, since they are larger than the pieces by their slack. */
const HAIR_MM = 1e-6;

/**
 * Fewer pages than that no arrangement could use: by the pieces' area, and since of pieces that no two of share a page each
 * has one of its own. Tiles have pages of their own, behind the first where words are small. What pages carry beside pieces is not counted.
 */
export function leastSheets(fitting: readonly (readonly Fitting[])[], area: Area, tiles: number): number {
  if (tiles > 0) return area.print === 'large' ? tiles : tiles + 1;
  const turned = fitting.flat();
  const stock = stockOf(
    turned.map((one) => shapeOfItem(one, { roomed: false })),
    HAIR_MM,
  );
  let at = 0;
  const turns = fitting.map((each) => each.map(() => at++));
  const areas = turns.map(([first = 0]) => stock.shapes[first]?.area ?? 0);
  const byArea = Math.ceil(areas.reduce((sum, each) => sum + each, 0) / (area.width * area.height));
  // Both turned half about lie as before: half the turns of one will do.
  const half = (each: readonly number[]) => each.filter((shape) => (turned[shape]?.turn ?? 0) < HALF_TURN);
  const share = (one: number, other: number): boolean =>
    half(turns[one] ?? []).some((a) => (turns[other] ?? []).some((b) => mayShare(stock, a, b, area, STEP_MM)));
  return Math.max(1, byArea, mostApart(areas, share));
}

/** The most pieces found that no two of share a page, largest first: a bound as long as they are so, whether the most or not. */
function mostApart(areas: readonly number[], share: (one: number, other: number) => boolean): number {
  const order = areas.map((_, index) => index).sort((a, b) => (areas[b] ?? 0) - (areas[a] ?? 0));
  const sharing = areas.map((_, one) => areas.map((_, other) => other < one && share(other, one)));
  const from = (start: number): number => {
    const apart: number[] = [];
    for (const one of order.slice(start)) {
      if (!apart.some((other) => sharing[Math.max(one, other)]?.[Math.min(one, other)])) apart.push(one);
    }
    return apart.length;
  };
  return Math.max(0, ...order.map((_, start) => from(start)));
}
