import type { Draft, Piece } from '../draft-types';
import { type Point, rotate } from '../geometry';
import { outlineOf } from '../pieces/outline';
import { type Layer, layerOf } from './layers';

/** One thing to cut out: the copy of a piece of a draft, as it lies with its grain along x; fold pieces unfolded. */
export type Cut = {
  readonly draft: number;
  readonly piece: number;
  readonly copy: number;
  /** Turned over: the other of a mirrored pair. */
  readonly flipped: boolean;
  readonly layer: Layer;
  /** Shared by copies that are alike. */
  readonly outline: readonly Point[];
};

/** Everything there is to cut for the drafts, piece by piece: what the cutting lists say, neither more nor less. */
export function cutsOf(drafts: readonly Pick<Draft, 'pieces'>[]): readonly Cut[] {
  return drafts.flatMap((draft, index) =>
    draft.pieces.flatMap((piece, at) => {
      const sides = (piece.mirrored ? [false, true] : [false]).map((flipped) => ({
        flipped,
        outline: alongGrain(piece, flipped),
      }));
      return Array.from({ length: piece.copies }, (_, copy): readonly Cut[] =>
        sides.slice(copy % sides.length, (copy % sides.length) + 1).map((side) => ({
          draft: index,
          piece: at,
          copy,
          layer: layerOf(piece),
          ...side,
        })),
      ).flat();
    }),
  );
}

/** The outline to cut with the grain, from its first end to its second, along x. */
function alongGrain(piece: Piece, flipped: boolean): readonly Point[] {
  const [from, to] = piece.grain;
  const side = flipped ? -1 : 1;
  const turn = -Math.atan2(to.y - from.y, side * (to.x - from.x));
  return outlineOf(piece.cutLine, piece.onFold).map(({ x, y }) => rotate({ x: side * x, y }, turn));
}
