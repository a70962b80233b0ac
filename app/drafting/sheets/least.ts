import { ringArea } from '../packing';
import type { Area } from './area';
import type { Figure } from './figure';

/**
 * Fewer pages than that no arrangement could use: by the pieces' area, and since no two pieces larger than half a page
 * share one. Tiles have pages of their own, behind the first. What pages carry beside pieces is not counted.
 */
export function leastSheets(fitting: readonly Figure[], { width, height }: Area, tiles: number): number {
  const page = width * height;
  const areas = fitting.map(({ outline }) => Math.abs(ringArea(outline)));
  const byArea = Math.ceil(areas.reduce((sum, area) => sum + area, 0) / page);
  const byLargest = areas.filter((area) => area > page / 2).length;
  return tiles > 0 ? tiles + 1 : Math.max(1, byArea, byLargest);
}
