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

/**
 * What a label may say in large print, the fullest first: at the least the number that the pages of words tell of. `at` is
 * the piece's place in the draft, from 0.
 */
export function largeLabels(labelled: Labelled, at: number, say: Say): readonly (readonly Paragraph[])[] {
  const [, ...rest] = labelOf(labelled, say);
  const name = { text: numbered(labelled.piece, at, say), bold: true, large: 1.2 };
  return [[name, ...rest], [name, ...rest.slice(0, 1)], [name], [{ text: String(at + 1), bold: true, large: 1.3 }]];
}

/** A piece's number and name. */
export const numbered = (piece: Piece, at: number, say: Say): string =>
  say('list.at', { at: at + 1, name: say(`piece.${piece.name}`) });

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
