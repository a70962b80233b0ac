// The pencil plan in sentences: which paper, what to join, what each line must measure.

import type { Say, Unit } from '../../body';
import type { Draft, Piece } from '../draft-types';
import { edgeName } from '../pieces/edge-name';
import { howMany } from '../pieces/how-many';
import { papers } from '../sheets/papers';
import type { Join, PencilLine, PencilPiece } from './plan';

/** What numbers lines of one kind: `fold-3`. */
const NUMBER = /-\d+$/;
/** Sheets a maker has at hand, by the unit she thinks in, the smaller first; overlapped by this much where glued, mm. */
const SHEETS = { cm: ['a4', 'a3'], in: ['letter', 'tabloid'] } as const;
const GLUED_MM = 15;
/** A notch no further along lies at the point itself, mm. */
const NONE_MM = 0.5;

/** What stands above a piece's drawing, a sentence each. */
export function headWords(plan: PencilPiece, piece: Piece, say: Say, unit: Unit): readonly string[] {
  const { width, height } = plan;
  return [
    howMany(piece, false, say),
    say('list.after', { one: say('pencil.paper', { width, height, unit }), two: sheetWords(plan, say, unit) }),
    ...(piece.onFold ? [say('pencil.fold')] : []),
  ];
}

function sheetWords({ width, height }: PencilPiece, say: Say, unit: Unit): string {
  const [small] = SHEETS[unit];
  for (const id of SHEETS[unit]) {
    const { width: wide, height: high } = papers[id];
    if (width <= wide && height <= high) return say('pencil.sheet.upright', { paper: say(`paper.${id}`) });
    if (width <= high && height <= wide) return say('pencil.sheet.aside', { paper: say(`paper.${id}`) });
  }
  const glued = (wide: number, high: number) =>
    Math.ceil((width - GLUED_MM) / (wide - GLUED_MM)) * Math.ceil((height - GLUED_MM) / (high - GLUED_MM));
  const { width: wide, height: high } = papers[small];
  const count = Math.min(glued(wide, high), glued(high, wide));
  return say('pencil.sheet.glued', { count, paper: say(`paper.${small}`), overlap: GLUED_MM, unit });
}

/** What a line is called. */
export function lineName(line: PencilLine, piece: Piece, say: Say): string {
  if (line.role === 'grain') return say('pencil.grain');
  if (line.role === 'inside' || line.role === 'cut') return say(`line.${line.name.replace(NUMBER, '')}`);
  const known = edgeName({ name: line.name, role: line.role }, piece);
  return say(known ? `edge.${known}` : `pencil.role.${line.role}`);
}

/** How one join is drawn. */
export const joinWords = ({ kind, through }: Join, say: Say): string =>
  say(`pencil.join.${kind}`, { through: through.join(' – ') });

/** All there is to say of a line, a sentence each. */
export function lineWords(line: PencilLine, piece: Piece, say: Say, unit: Unit): readonly string[] {
  const name = lineName(line, piece, say);
  const joins = line.joins.map((join) => joinWords(join, say));
  if (line.role === 'grain') return [say('pencil.line.plain', { name, joins })];
  return [say('pencil.line.measured', { name, joins, length: line.length, unit }), ...besideWords(line, say, unit)];
}

/** What is left to say of a line once it is drawn, a sentence each. */
export function drawnWords(line: PencilLine, piece: Piece, say: Say, unit: Unit): readonly string[] {
  const name = lineName(line, piece, say);
  if (line.role === 'grain') return [name];
  return [say('pencil.line.drawn', { name, length: line.length, unit }), ...besideWords(line, say, unit)];
}

/** What is added beside a line, and its notches. */
function besideWords({ allowance, notches }: PencilLine, say: Say, unit: Unit): readonly string[] {
  return [
    ...(allowance > 0 ? [say('pencil.add', { allowance, unit })] : []),
    ...notches.map(({ from, at, ticks }) =>
      at < NONE_MM ? say(`pencil.notch-at.${ticks}`, { from }) : say(`pencil.notch.${ticks}`, { from, at, unit }),
    ),
  ];
}

/** Whose pencil plan it is. */
export const planTitle = (draft: Draft, say: Say): string =>
  say('pencil.title', { garment: say(`garment.${draft.order.garment}.name`), toy: draft.toy });
