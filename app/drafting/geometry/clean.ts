// Rings of points made fit for paper: no crossings, no folds, no points to spare.

import { Clipper, FillRule, type Path64 } from 'clipper2-ts';
import { cross, dot, type Point, subtract } from '../../body/point';

/** Whole steps the union counts in, per mm: a hundred-thousandth of a millimetre, far under any cutting. */
const STEPS_PER_MM = 1e5;

/** A point nearer than this to the line between its neighbours says nothing, mm. */
const SPARE_MM = 0.002;

/** The outline of what a clockwise ring of points goes round: loops and folds gone, the largest part kept. */
export function united(ring: readonly Point[]): Point[] {
  const subject: Path64 = ring.map((p) => ({ x: Math.round(p.x * STEPS_PER_MM), y: Math.round(p.y * STEPS_PER_MM) }));
  const parts = Clipper.union([subject], FillRule.Positive);
  const areas = parts.map((part) => Clipper.area(part));
  const outer = parts[areas.indexOf(Math.max(...areas))] ?? [];
  return outer.map((p) => ({ x: p.x / STEPS_PER_MM, y: p.y / STEPS_PER_MM }));
}

/** The ring without the points its neighbours make needless, within 0.002 mm. */
export function simplified(ring: readonly Point[]): Point[] {
  const turn = farthestFrom(ring, ring[0]);
  const kept = thinned([...ring.slice(turn), ...ring.slice(0, turn + 1)]);
  kept.pop();
  return kept;
}

/** Thins an open chain from its start, keeping both ends. */
function thinned(chain: readonly Point[]): Point[] {
  const [home] = chain;
  if (!home) return [];
  const kept = [home];
  let anchor = home;
  let from = 0;
  for (let i = 2; i < chain.length; i += 1) {
    const next = chain[i];
    const before = chain[i - 1];
    if (!next || !before || allSpare(chain, from + 1, i, anchor, next)) continue;
    kept.push(before);
    anchor = before;
    from = i - 1;
  }
  const last = chain[chain.length - 1];
  if (last && chain.length > 1) kept.push(last);
  return kept;
}

function allSpare(chain: readonly Point[], first: number, past: number, from: Point, to: Point): boolean {
  const along = subtract(to, from);
  const square = dot(along, along);
  for (let i = first; i < past; i += 1) {
    const p = chain[i];
    if (!p) break;
    const away = subtract(p, from);
    const share = dot(away, along);
    const off = cross(along, away);
    const beside = share >= 0 && share <= square && off * off <= SPARE_MM * SPARE_MM * square;
    if (!beside) return false;
  }
  return true;
}

/** The index of a point that is surely a corner worth keeping: the farthest from another. */
function farthestFrom(ring: readonly Point[], origin: Point | undefined): number {
  let index = 0;
  let most = -1;
  for (const [i, p] of ring.entries()) {
    const step = subtract(p, origin ?? p);
    const square = dot(step, step);
    if (square > most) [most, index] = [square, i];
  }
  return index;
}
