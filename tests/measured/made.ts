import type { Card, Order } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft, Edge, Piece } from '../../app/drafting/draft-types';
import { type Path, type Point, pathLength, pointAtLength } from '../../app/drafting/geometry';
import { bodyFrom } from '../../app/measuring';

/** Choices as an order names them. */
export type Chosen = NonNullable<Order['choices']>;

/** A garment drafted for a card; null where the order is not known or the toy is refused. */
export function made(card: Card, garment: string, order: Omit<Order, 'garment'> = {}): Draft | null {
  const full = fullOrder({ garment, ...order }, card.taken);
  if (!full.ok) return null;
  const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
  return outcome.ok ? outcome.draft : null;
}

export function pieceNamed({ pieces }: Draft, name: string): Piece | undefined {
  return pieces.find((piece) => piece.name === name);
}

export function edgeNamed(draft: Draft, piece: string, edge: string): Edge | undefined {
  return pieceNamed(draft, piece)?.edges.find((each) => each.name === edge);
}

export function lengthNamed(draft: Draft, piece: string, edge: string): number {
  const found = pieceNamed(draft, piece);
  return [...(found?.edges ?? []), ...(found?.lines ?? [])].find((each) => each.name === edge)?.length ?? 0;
}

export function reading(card: Card, id: keyof Card['readings']): number {
  return card.readings[id]?.[0] ?? Number.NaN;
}

/** Places along a path, mm apart or nearer. */
export function along(path: Path, step = 1): { readonly point: Point; readonly tangent: Point }[] {
  const length = pathLength(path);
  const count = Math.max(Math.ceil(length / step), 2);
  return Array.from({ length: count + 1 }, (_, n) => pointAtLength(path, (length * n) / count));
}

/** How far a path turns from its start to its end, radians; hollow edges of a clockwise ring turn left: negative. */
export function turning(path: Path): number {
  const ways = along(path).map(({ tangent }) => Math.atan2(tangent.y, tangent.x));
  return ways.slice(1).reduce((sum, way, n) => {
    const step = way - (ways[n] ?? way);
    return sum + Math.atan2(Math.sin(step), Math.cos(step));
  }, 0);
}

/** Length of an edge at its cut line, the corners left aside: hollow edges are shorter there. */
export function cutLength(edge: Edge): number {
  return edge.length + edge.allowance * turning(edge.path);
}
