import type { Draft, Edge, Piece, Ref, Seam } from '../draft-types';

/** Looks things of a draft up by name. @throws RangeError for a name the draft does not have */
export type Known = {
  readonly draft: Draft;
  readonly piece: (name: string) => Piece;
  readonly seam: (name: string) => Seam;
  /** An edge of a piece; undefined for a line inside it. */
  readonly edge: (ref: Ref) => Edge | undefined;
  /** A strip that is cut, not drawn to a shape: what binds. */
  readonly isStrip: (piece: string) => boolean;
};

export function knownOf(draft: Draft): Known {
  const pieces = new Map(draft.pieces.map((piece) => [piece.name, piece]));
  const seams = new Map(draft.seams.map((seam) => [seam.name, seam]));
  const strips = new Set(
    draft.notions.filter(({ kind }) => kind === 'bias' || kind === 'strip').map(({ place }) => place),
  );
  const piece = (name: string) => found(pieces, name);
  return {
    draft,
    piece,
    seam: (name) => found(seams, name),
    edge: (ref) => piece(ref.piece).edges.find(({ name }) => name === ref.edge),
    isStrip: (name) => strips.has(name),
  };
}

function found<T>(rows: ReadonlyMap<string, T>, name: string): T {
  const row = rows.get(name);
  if (!row) throw new RangeError(`the draft has no ${name}`);
  return row;
}

export const piecesOf = (refs: readonly Ref[]): readonly string[] => [...new Set(refs.map(({ piece }) => piece))];
