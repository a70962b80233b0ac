import type { Say, Unit } from '../../body';
import type { Draft, Piece } from '../draft-types';
import { garmentsIn } from '../outfit';
import { howMany } from '../pieces/how-many';
import type { Form } from '../sheets/forms';
import { cloths } from '../sizes/cloths';
import { allowancesOf } from '../told';
import type { Paragraph } from './flow';

/** What a label needs to know of its piece. */
export type Labelled = {
  readonly draft: Draft;
  readonly piece: Piece;
  readonly whole: boolean;
  readonly form: Form;
  readonly units: Unit;
};

/** All a piece carries in words, the most needed first: piece, how many to cut, whose, allowances, date. */
export function labelOf({ draft, piece, whole, form, units }: Labelled, say: Say): readonly Paragraph[] {
  const garment = say(`garment.${draft.order.garment}.name`);
  return [
    { text: say(`piece.${piece.name}`), bold: true, large: 1.45 },
    { text: howMany(piece, whole, say), bold: true },
    { text: say('label.made-for', { garment, toy: draft.toy }) },
    { text: allowancesOf(piece, form, units, say) },
    { text: say('print.date', { date: draft.order.date }) },
  ];
}

/** Whether a draft's cloth has a nap, so that all pieces lie one way. */
export function hasNap(draft: Draft): boolean {
  return cloths.some((cloth) => cloth.id === draft.order.cloth && cloth.nap);
}

/** The toy and garment, or all garments of an outfit, as titles have it. */
export function madeFor(draft: Draft, say: Say): string {
  return say('label.made-for', { garment: garmentWords(draft, say), toy: draft.toy });
}

export const garmentWords = (draft: Draft, say: Say): string =>
  say('list.row', { of: garmentsIn(draft).map(({ order }) => say(`garment.${order.garment}.name`)) });
