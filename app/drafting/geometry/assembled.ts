// One ring from parallels and the corners that join them.

import { dot, type Point, subtract } from '../../body/point';
import type { Corner } from './corner';
import { firstCrossing } from './meet';

export type Assembled = {
  readonly ring: readonly Point[];
  /** Parallels whose corners passed each other without their cuts crossing: run backwards here, for a union to clean. */
  readonly overrun: readonly number[];
};

/**
 * What is kept of each parallel and what lies between, in order; corner i is where parallel i starts. Where both ends of
 * a parallel are cut past each other, the cuts go on only to where they cross, and nothing is left of the parallel.
 */
export function assembled(parallels: readonly (readonly Point[])[], corners: readonly Corner[]): Assembled {
  const betweens = corners.map((corner) => corner.between);
  const overrun: number[] = [];
  const kept = parallels.map((points, i) => {
    const next = (i + 1) % parallels.length;
    const from = corners[i]?.second ?? 0;
    const to = points.length - 1 - (corners[next]?.first ?? 0);
    if (from <= to) return points.slice(from, to + 1);
    const [before, after] = [betweens[i] ?? [], betweens[next] ?? []];
    if (!passed(points, from, to, before, after)) return [];
    const crossing = firstCrossing(before, after);
    if (!crossing) {
      overrun.push(i);
      return points.slice(to + 1, from).reverse();
    }
    betweens[i] = [...before.slice(0, crossing.first + 1), crossing.point];
    betweens[next] = after.slice(crossing.second + 1);
    return [];
  });
  return { ring: kept.flatMap((points, i) => [...(betweens[i] ?? []), ...points]), overrun };
}

/** Whether a parallel's first cut lies past its last one. */
function passed(
  points: readonly Point[],
  from: number,
  to: number,
  before: readonly Point[],
  after: readonly Point[],
): boolean {
  if (from > to + 1) return true;
  const step = Math.min(Math.max(to, 0), points.length - 2);
  const [a, b] = [points[step], points[step + 1]];
  const [begin, finish] = [before[before.length - 1], after[0]];
  if (!a || !b || !begin || !finish) return false;
  return dot(subtract(finish, begin), subtract(b, a)) < 0;
}
