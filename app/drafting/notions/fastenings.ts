import type { Mm } from '../../body';
import type { Notion } from '../draft-types';
import type { Drawing } from '../drawing/draw';
import { active, type Garment } from '../rows/garment';
import { tapeWidth } from '../sizes/fastening';

/** How wide an elastic is, and how large the toy. */
export type Measured = { readonly chest: Mm | undefined; readonly elastic: Mm };

/** What closes each opening, and the elastics: by the garment's own rows. What is shorter than it is wide is cut square. */
export function fasteningsOf(garment: Garment, drawing: Drawing, { chest, elastic }: Measured): readonly Notion[] {
  const tape = tapeWidth(chest);
  return active(garment.notions, drawing.choices).map(({ kind, place, length, count }): Notion => {
    const long = length(drawing);
    const many = count ? { count } : {};
    if (kind === 'elastic') return { kind, place, length: long, width: elastic, ...many };
    return { kind: 'hook-and-loop', place, length: Math.max(long, tape), width: tape, ...many };
  });
}
