import { type Say, type Unit, unitFace } from '../../body';
import type { Draft, Piece, Seam } from '../draft-types';
import { headWords, lineWords, type Mark, type PencilPiece } from '../pencil';
import { allowancesOf } from './allowances';

/** A piece as text: sentences on the whole, its edges and inner lines in order, and a table of its points. */
export type PieceTold = {
  readonly name: string;
  readonly head: readonly string[];
  readonly lines: readonly string[];
  readonly points: {
    readonly caption: string;
    readonly columns: readonly [string, ...string[]];
    readonly marks: readonly Mark[];
  };
};

type Hand = { readonly say: Say; readonly units: Unit; readonly language: string };

/** All that a piece's drawing shows. `language` is a BCP 47 tag. */
export function pieceTold(draft: Draft, plan: PencilPiece, { say, units, language }: Hand): PieceTold | null {
  const piece = draft.pieces[plan.piece];
  if (!piece) return null;
  const name = say(`piece.${piece.name}`);
  return {
    name,
    head: [...headWords(plan, piece, say, units), allowancesOf(piece, 'cut', units, say)],
    lines: plan.lines.map((line) =>
      [...lineWords(line, piece, say, units), ...joinsOf(draft.seams, piece, line.name, say)].reduce((one, two) =>
        say('list.after', { one, two }),
      ),
    ),
    points: {
      caption: say('twin.points', { piece: name, unit: unitFace({ unit: units, locale: language }) }),
      columns: [say('twin.point'), say('pencil.from-left'), say('pencil.from-bottom')],
      marks: plan.marks,
    },
  };
}

/** The seams an edge is sewn in, and the pieces on the other side. */
function joinsOf(seams: readonly Seam[], piece: Piece, edge: string, say: Say): readonly string[] {
  const here = seams.flatMap(({ name, first, second }) => {
    const holds = (side: Seam['first']) => side.some((ref) => ref.piece === piece.name && ref.edge === edge);
    if (!holds(first) && !holds(second)) return [];
    const others = holds(first) ? second : first;
    const pieces = [...new Set(others.map((ref) => say(`piece.${ref.piece}`)))];
    const seam = say(`seam.${name}`);
    return pieces.length > 0 ? [say('list.aside', { name: seam, what: say('list.row', { of: pieces }) })] : [seam];
  });
  return here.length > 0 ? [say('twin.seams', { seams: [...new Set(here)] })] : [];
}
