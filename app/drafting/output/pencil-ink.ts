// One piece of the pencil plan on paper: its drawing with numbered points, where they lie, and what to join.

import { inTurn, type Mm } from '../../body';
import type { Draft, Piece } from '../draft-types';
import { type Path, type Point, transformPath } from '../geometry';
import type { Box } from '../packing';
import { headWords, lineWords, type Mark, type PencilPiece, planTitle } from '../pencil';
import { centred, type Paragraph, setIn, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke, type Words } from './ink';
import type { Lettering } from './lettering';
import { numbersInk } from './points-numbered';

export type Size = { readonly width: Mm; readonly height: Mm };

const MARGIN_MM = 14;
const TITLE_PT = 17;
const TEXT_PT = 9.5;
/** Of the room between the margins, what the drawing may take across, and of the page upwards. */
const DRAWN_SHARE = 0.52;
const DRAWN_HIGH_SHARE = 0.45;
const BETWEEN_MM = 6;
const ROW_MM = 4.7;
/** Where the columns of a row end: the number, from the left, from the bottom; mm. */
const COLUMNS_MM = [8, 21, 38] as const;
/** The same where lines run leftwards: the number stands at the right. */
const LEFTWARDS_MM = [38, 28, 15] as const;

/** The pages of one piece: one as a rule, more where it has many points. */
export function pencilInk(
  draft: Draft,
  plan: PencilPiece,
  page: Size,
  lettering: Lettering,
): readonly (readonly Ink[])[] {
  const piece = draft.pieces[plan.piece];
  if (!piece) return [];
  const { say, units, widthOf } = lettering;
  const wide = page.width - 2 * MARGIN_MM;
  const head = setIn(
    [
      { text: say(`piece.${piece.name}`), bold: true, large: TITLE_PT / TEXT_PT },
      { text: planTitle(draft, say) },
      ...headWords(plan, piece, say, units).map((text) => ({ text, before: 0.6 })),
      { text: say('pencil.how'), before: 1.6 },
    ],
    TEXT_PT,
    wide,
    widthOf,
  );
  const top = MARGIN_MM + head.height + BETWEEN_MM;
  const leftwards = widthOf.direction === 'rtl';
  const drawn = wide * DRAWN_SHARE;
  const room: Box = {
    x: leftwards ? page.width - MARGIN_MM - drawn : MARGIN_MM,
    ...{ y: top, width: drawn, height: page.height * DRAWN_HIGH_SHARE },
  };
  const drawing = drawingInk(piece, plan, room, lettering);
  const beside = leftwards ? MARGIN_MM + wide / 4 : room.x + room.width + BETWEEN_MM;
  const rows = tableInk(plan.marks, [beside], top, top + room.height, lettering);
  const start = Math.max(drawing.bottom, rows.bottom) + BETWEEN_MM;
  const first: Ink[] = [
    ...wordsOf(head, { x: MARGIN_MM, y: MARGIN_MM, width: wide, height: head.height }, 'words'),
    ...drawing.ink,
    ...rows.ink,
  ];
  return linesInk(plan, piece, { page, first, start, rest: rows.rest }, lettering);
}

type Started = {
  readonly page: Size;
  readonly first: readonly Ink[];
  readonly start: Mm;
  readonly rest: readonly Mark[];
};

/** What is left of the points, then the sentences of each line, on as many pages as they take. */
function linesInk(
  plan: PencilPiece,
  piece: Piece,
  { page, first, start, rest }: Started,
  lettering: Lettering,
): readonly (readonly Ink[])[] {
  const { say, units, widthOf } = lettering;
  const bottom = page.height - MARGIN_MM;
  const wide = page.width - 2 * MARGIN_MM;
  const pages: Ink[][] = [[...first]];
  let y = start;
  for (let left = rest; left.length > 0; ) {
    const inOrder = widthOf.direction === 'rtl' ? [3, 2, 1, 0] : [0, 1, 2, 3];
    const columns = inOrder.map((n) => MARGIN_MM + n * (wide / 4));
    const needed = (Math.ceil(left.length / columns.length) + 1) * ROW_MM;
    const table = tableInk(left, columns, y, Math.min(bottom, y + needed + ROW_MM), lettering);
    pages.at(-1)?.push(...table.ink);
    left = table.rest;
    y = table.bottom + BETWEEN_MM;
    if (left.length > 0) {
      pages.push([]);
      y = MARGIN_MM;
    }
  }
  for (const line of plan.lines) {
    const paragraph: Paragraph = { text: inTurn(lineWords(line, piece, say, units), say) };
    const set = setIn([paragraph], TEXT_PT, wide, widthOf);
    if (y + set.height > bottom) {
      pages.push([]);
      y = MARGIN_MM;
    }
    pages.at(-1)?.push(...wordsOf(set, { x: MARGIN_MM, y, width: wide, height: set.height }, 'words'));
    y += set.height + 1.2;
  }
  return pages;
}

/** Points in rows under a heading, a column after the other, down to `bottom`; `rest` had no room. */
function tableInk(
  marks: readonly Mark[],
  columns: readonly Mm[],
  top: Mm,
  bottom: Mm,
  { say, units, widthOf }: Lettering,
) {
  const fit = Math.max(1, Math.floor((bottom - top) / ROW_MM) - 1);
  const placed = marks.slice(0, fit * columns.length);
  const words = (text: string, x: Mm, y: Mm, bold: boolean): Words => ({
    ...{ kind: 'words', layer: 'words', turn: 0, size: bold ? SMALLEST_PT : TEXT_PT, bold, text },
    at: { x: x - widthOf(text, bold ? SMALLEST_PT : TEXT_PT, bold), y },
  });
  const bare = (mm: Mm) => say('pencil.bare', { length: mm, unit: units });
  const [atNumber, atLeft, atBottom] = widthOf.direction === 'rtl' ? LEFTWARDS_MM : COLUMNS_MM;
  const used = columns.slice(0, Math.ceil(placed.length / fit));
  const ink = used.flatMap((x, column): readonly Ink[] => [
    words(say('pencil.from-left'), x + atLeft + 2, top + ROW_MM * 0.7, true),
    words(say('pencil.from-bottom'), x + atBottom + 2, top + ROW_MM * 0.7, true),
    ...placed.slice(column * fit, (column + 1) * fit).flatMap(({ number, x: across, y: up }, row) => {
      const y = top + (row + 1.75) * ROW_MM;
      return [
        {
          ...words(String(number), x + atNumber, y, true),
          size: TEXT_PT,
          at: { x: x + atNumber - widthOf(String(number), TEXT_PT, true), y },
        },
        words(bare(across), x + atLeft, y, false),
        words(bare(up), x + atBottom, y, false),
      ];
    }),
  ]);
  return { ink, rest: marks.slice(placed.length), bottom: top + (Math.min(fit, placed.length) + 1) * ROW_MM };
}

/** The piece small, in its paper, with its points and their numbers. */
export function drawingInk(
  piece: Piece,
  plan: PencilPiece,
  within: Box,
  { widthOf, say }: Lettering,
): { readonly ink: readonly Ink[]; readonly bottom: Mm } {
  const share = Math.min(within.width / plan.width, within.height / plan.height, 1);
  const spare = widthOf.direction === 'rtl' ? within.width - plan.width * share : 0;
  const room = { ...within, x: within.x + spare };
  const to = onPaper(piece, plan, share, room);
  const corner = { x: room.x, y: room.y };
  const size = { width: plan.width * share, height: plan.height * share };
  const paths = (all: readonly Path[]) => all.map((path) => transformPath(path, to));
  const outline = paths(piece.edges.map(({ path }) => path));
  const strokes: readonly Ink[] = [
    stroke('marks', 'rule', frame(corner, size), true),
    ...outline.map((path) => stroke('seam', 'mark', path)),
    ...paths(piece.lines.map(({ path }) => path)).map((path) => stroke('marks', 'inner', path)),
    ...plan.marks.map((mark) => stroke('marks', 'dot', dot(placeOf(mark, plan, share, room)))),
  ];
  const points = plan.marks.map((mark) => placeOf(mark, plan, share, room));
  const numbers = plan.marks.map(({ number }) => String(number));
  const words = numbersInk(numbers, points, outline, strokes, widthOf);
  const title = piece.onFold
    ? [
        centred(
          say('pencil.fold-here'),
          { x: corner.x - 2.6, y: corner.y + size.height / 2 },
          SMALLEST_PT,
          false,
          widthOf,
          -Math.PI / 2,
        ),
      ]
    : [];
  return { ink: [...strokes, ...words, ...title], bottom: room.y + size.height };
}

const placeOf = ({ x, y }: Mark, { height }: PencilPiece, share: number, room: Box): Point => ({
  x: room.x + x * share,
  y: room.y + (height - y) * share,
});

/** From the draft onto the small paper: laid where the plan's first corner lies. */
function onPaper(piece: Piece, plan: PencilPiece, share: number, room: Box): (p: Point) => Point {
  const first = piece.edges[0]?.path[0]?.from ?? { x: 0, y: 0 };
  const mark = plan.marks[0] ?? { number: 1, x: 0, y: 0 };
  const at = placeOf(mark, plan, share, room);
  return (p) => ({ x: at.x + (p.x - first.x) * share, y: at.y + (p.y - first.y) * share });
}

const dot = (p: Point): Path => [{ kind: 'line', from: p, to: { x: p.x + 0.01, y: p.y } }];

const frame = ({ x, y }: Point, { width, height }: Size): Path => {
  const [right, bottom] = [x + width, y + height];
  const corners = [
    { x, y },
    { x: right, y },
    { x: right, y: bottom },
    { x, y: bottom },
  ];
  return corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % 4] ?? from }));
};
