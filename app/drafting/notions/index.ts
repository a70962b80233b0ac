// The door of notions: what a draft asks for besides its pieces. Amounts only: nothing is drawn here and no word is chosen
// but in words.ts, which is handed `say`.

import type { Mm } from '../../body';
import type { Draft, Notion } from '../draft-types';
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
  const sewn: Mm = made.seams.reduce((sum, { firstLength, sewn }) => sum + firstLength * sewn, 0);
  return [
    ...clothOf(made),
    ...stripsOf(made.pieces),
    ...fasteningsOf(garment, drawing, elastic),
    ...(sewn > 0 ? [{ kind: 'thread' as const, place: 'all', length: sewn * THREAD_SHARE }] : []),
  ];
}
