// The door of notions: what a draft asks for besides its pieces. Amounts only: nothing is drawn here and no word is chosen
// but in words.ts, which is handed `say`.

import type { Mm } from '../../body';
import type { Draft, Notion, Ref, Seam } from '../draft-types';
import type { Drawing } from '../drawing/draw';
import type { Garment } from '../rows/garment';
import { clothOf } from './cloth';
import { fasteningsOf } from './fastenings';
import { stripsOf } from './strips';

/** A seam takes about three times its length in thread, upper and lower together (common practice, no source). */
const THREAD_SHARE = 3;

/** All that is not a piece: cloth, strips, what closes it, elastic, and a guide to how much thread. */
export function notionsOf(
  garment: Garment,
  drawing: Drawing,
  made: Pick<Draft, 'pieces' | 'seams'>,
  elastic: Mm,
): readonly Notion[] {
  const sewn: Mm = made.seams
    .filter((seam) => drawing.wearer.cloth.frays || !isLeftRaw(seam, made.pieces))
    .reduce((sum, { firstLength, sewn }) => sum + firstLength * sewn, 0);
  return [
    ...clothOf(made),
    ...stripsOf(made.pieces),
    ...fasteningsOf(garment, drawing, elastic),
    ...(sewn > 0 ? [{ kind: 'thread' as const, place: 'all', length: sewn * THREAD_SHARE }] : []),
  ];
}

/** Nothing is turned there, and so nothing sewn where cloth does not fray. */
function isLeftRaw({ join, first }: Seam, pieces: Draft['pieces']): boolean {
  const added = ({ piece, edge }: Ref) =>
    pieces.find(({ name }) => name === piece)?.edges.find(({ name }) => name === edge)?.allowance;
  return join === 'folded' && first.every((ref) => added(ref) === 0);
}
