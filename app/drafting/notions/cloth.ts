import type { Mm } from '../../body';
import { type Cut, cutsOf, isStrip } from '../cloth';
import type { Draft, Notion } from '../draft-types';
import { CLOTH_WIDE_MM } from '../sizes/fullness';

/** Scissors pass between two pieces, mm (common practice, no source). */
const BETWEEN_MM = 2;

/**
 * How much of each cloth, at the usual width, or wider where a piece is: laid in rows by the boxes round the pieces, all
 * one way, so never too little; a lay fits closer. Strips that bind an edge are told by themselves.
 */
export function clothOf(draft: Pick<Draft, 'pieces'>): readonly Notion[] {
  const cuts = cutsOf([draft]).filter(({ piece }) => {
    const of = draft.pieces[piece];
    return of !== undefined && !isStrip(of);
  });
  return [...new Set(cuts.map(({ layer }) => layer))].map((layer) => {
    const boxes = cuts.filter((cut) => cut.layer === layer).map(boxOf);
    const width = Math.max(CLOTH_WIDE_MM, ...boxes.map((box) => box.across));
    return { kind: 'cloth', place: layer, length: rowsOf(boxes, width), width };
  });
}

type Box = { readonly along: Mm; readonly across: Mm };

/** A cut lies with its grain along x. */
function boxOf({ outline }: Cut): Box {
  const [xs, ys] = [outline.map((p) => p.x), outline.map((p) => p.y)];
  return { along: Math.max(...xs) - Math.min(...xs), across: Math.max(...ys) - Math.min(...ys) };
}

/** Longest first, each in the first row that has room: what the rows take of the length. */
function rowsOf(boxes: readonly Box[], width: Mm): Mm {
  const rows: { long: Mm; left: Mm }[] = [];
  for (const { along, across } of [...boxes].sort((a, b) => b.along - a.along)) {
    const row = rows.find(({ left }) => left >= across);
    if (row) row.left -= across + BETWEEN_MM;
    else rows.push({ long: along, left: width - across - BETWEEN_MM });
  }
  return rows.reduce((sum, { long }) => sum + long + BETWEEN_MM, 0);
}
