import type { Say, Unit } from '../../body';
import type { Draft, Piece, Role } from '../draft-types';
import { garmentsIn } from '../outfit';
import { howMany } from '../pieces/how-many';
import type { Form } from '../sheets/forms';
import { cloths } from '../sizes/cloths';
import type { Paragraph } from './flow';

/** A space no line is broken at: a number stays with its unit. */
const NO_BREAK = '\u00a0';

/** What a label needs to know of its piece. */
export type Labelled = {
  readonly draft: Draft;
  readonly piece: Piece;
  readonly whole: boolean;
  readonly form: Form;
  readonly units: Unit;
};

/** Roles whose allowance is worth naming, in the order named. */
const named: readonly Role[] = ['seam', 'hem', 'neckline', 'opening', 'closure', 'casing', 'edge'];

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

/** Every allowance, drawn or to be added, by role; the widest where edges of one role differ. */
export function allowancesOf(piece: Piece, form: Form, units: Unit, say: Say): string {
  const parts = named.flatMap((role) => {
    const widths = piece.edges.filter((edge) => edge.role === role).map((edge) => edge.allowance);
    const length = Math.max(0, ...widths);
    return length > 0 ? [say(`label.allowance.${role}`, { length, unit: units })] : [];
  });
  const unbroken = parts.map((part) => part.replaceAll(' ', NO_BREAK));
  if (parts.length === 0) return say('label.nothing-added');
  return say(form === 'cut' ? 'label.included' : `label.add-${form}`, { allowances: unbroken });
}
