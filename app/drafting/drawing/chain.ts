import type { Mm } from '../../body';
import type { Ref } from '../draft-types';
import { cross, endTangent, type Path, scale, startTangent } from '../geometry';
import type { Drawing } from './draw';

/** Length of a chain of edges for one sewing, mm. */
export function chainLength(refs: readonly Ref[], drawing: Drawing): Mm {
  return refs.reduce((sum, ref) => sum + drawing.edgeLength(ref.piece, ref.edge) * (ref.times ?? 1), 0);
}

/** Interior angles of the pieces at both ends of a chain, in walking order, radians. */
export function chainCorners(refs: readonly Ref[], drawing: Drawing): [number, number] {
  const [head, tail] = [refs[0], refs[refs.length - 1]];
  return [head ? cornerAt(head, 'start', drawing) : 0, tail ? cornerAt(tail, 'end', drawing) : 0];
}

/** The edge beside an edge at its walking start or end: who shares that corner of the ring. */
export function neighbour(ref: Ref, side: 'start' | 'end', drawing: Drawing): string | undefined {
  const names = Object.keys(drawing.drawn.get(ref.piece)?.shape.edges ?? {});
  const at = names.indexOf(ref.edge);
  if (at < 0) return undefined;
  const before = (side === 'start') !== Boolean(ref.back);
  return names[(at + (before ? names.length - 1 : 1)) % names.length];
}

/** Interior angle of the ring at an edge's walking start or end. */
export function cornerAt(ref: Ref, side: 'start' | 'end', drawing: Drawing): number {
  const edges = drawing.drawn.get(ref.piece)?.shape.edges ?? {};
  const path = edges[ref.edge];
  const beside = edges[neighbour(ref, side, drawing) ?? ''];
  if (!path || !beside) return 0;
  const before = (side === 'start') !== Boolean(ref.back);
  return before ? interior(beside, path) : interior(path, beside);
}

/** Interior angle where one path ends and the next starts, ring clockwise as seen: π on a straight run. */
export function interior(arriving: Path, leaving: Path): number {
  const back = scale(endTangent(arriving), -1);
  const on = startTangent(leaving);
  const turn = Math.atan2(cross(on, back), on.x * back.x + on.y * back.y);
  return turn < 0 ? turn + 2 * Math.PI : turn;
}
