import { inTurn, type Mm, type Say, unitFace } from '../../body';
import { ENGINE } from '../engine';
import { line, type Path, type Point, point, polyline } from '../geometry';
import type { Box } from '../packing';
import { papers } from '../sheets/papers';
import type { Print } from '../sheets/prints';
import { clippedInk } from './clip';
import { type DrawnFigure, figureInk, type InkLooks } from './figure-ink';
import { type Paragraph, type Setting, setIn, wordsOf } from './flow';
import { type Ink, LARGE_PT, stroke, type TextWidth } from './ink';
import { blankPdf, type PdfOptions } from './pdf';
import { pdfBrush, westernPdf } from './pdf-brush';

/** A sheet to write numbers on away from the phone: what is measured for a garment of a toy, in the order of the steps. */
export type NumbersSheet = {
  readonly toy: string;
  /** One, or all of an outfit. */
  readonly garments: readonly string[];
  /** Things to put on the toy first, by the codes of their words. */
  readonly marks: readonly string[];
  readonly rows: readonly {
    readonly measure: string;
    /** The code of the words that tell how it is taken. */
    readonly how: string;
    /** The side of the toy that faces her, where it changes. */
    readonly turn: string | null;
    readonly picture: DrawnFigure;
  }[];
};

const MARGIN_MM = 14;
const GUTTER_MM = 6;
const BETWEEN_MM = 5;

/** How a print sets it: rows side by side, words in points, a picture, and room for a number by hand with its line, mm. */
type Set = {
  readonly columns: number;
  readonly text: number;
  readonly picture: { readonly width: Mm; readonly height: Mm };
  readonly writing: { readonly width: Mm; readonly height: Mm };
};
const sets: Readonly<Record<Print, Set>> = {
  usual: { columns: 2, text: 9, picture: { width: 46, height: 25.6 }, writing: { height: 10, width: 26 } },
  large: { columns: 1, text: LARGE_PT, picture: { width: 78, height: 43.4 }, writing: { height: 18, width: 50 } },
};

const LOOKS: InkLooks = {
  fur: { grey: 1, pen: 'rule' },
  'fur-deep': { grey: 1, pen: 'rule' },
  'fur-pale': { grey: 1, pen: 'rule' },
  edge: { pen: 'rule' },
  ink: { grey: 0, pen: 'rule' },
  thread: { pen: 'rule' },
  patch: { grey: 1, pen: 'rule' },
  'side-line': { pen: 'inner' },
  tape: { grey: 0.78, pen: 'rule' },
  'tape-ticks': { pen: 'rule' },
  'tape-hidden': { pen: 'seam' },
  ruler: { grey: 0.92, pen: 'rule' },
  pencil: { pen: 'stitch' },
  guide: { pen: 'trim' },
  mark: { grey: 0, pen: 'rule' },
};

/** The sheet as PDF: a picture, what to do, and a line to write on for each number, in the maker's unit. */
export function toNumbersPdf(
  sheet: NumbersSheet,
  { say, units, script = westernPdf, print = 'usual', date }: PdfOptions & { readonly date: string },
) {
  const { width, height } = papers[units === 'in' ? 'letter' : 'a4'];
  const unit = unitFace({ unit: units, locale: script.language });
  const title = titleOf(sheet, say);
  const pdf = blankPdf(
    [width, height],
    { engine: ENGINE, order: { date } },
    { id: JSON.stringify(['numbers', units, print, sheet]), title, script },
  );
  const brush = pdfBrush(pdf, 1, script, print);
  const { columns, text, picture, writing } = sets[print];
  const column = (width - 2 * MARGIN_MM - GUTTER_MM * (columns - 1)) / columns;
  const wide = { x: MARGIN_MM, width: width - 2 * MARGIN_MM };
  const put = (inks: readonly Ink[]) => inks.forEach(brush.draw);
  let y = MARGIN_MM;

  const head = setIn(headOf(sheet, say), text, wide.width, brush.widthOf);
  put(wordsOf(head, { ...wide, y, height: head.height }, 'words'));
  y += head.height + BETWEEN_MM;

  for (const { cells, turn } of bandsOf(sheet, columns)) {
    const turned = turn
      ? setIn([{ text: say(`screen.step.turn.${turn}`), bold: true }], text, wide.width, brush.widthOf)
      : null;
    const set = cells.map((cell) => ({ ...cell, words: wordsIn(cell, column, print, say, brush.widthOf) }));
    const high = Math.max(picture.height, ...set.map(({ words }) => words.height + writing.height));
    const above = turned ? turned.height + BETWEEN_MM / 2 : 0;
    if (y + above + high > height - MARGIN_MM) {
      pdf.addPage([width, height]);
      y = MARGIN_MM;
    }
    if (turned) put(wordsOf(turned, { ...wide, y, height: turned.height }, 'words'));
    y += above;
    set.forEach(({ words, row }, index) => {
      const place = brush.widthOf.direction === 'rtl' ? columns - 1 - index : index;
      const box = { x: MARGIN_MM + place * (column + GUTTER_MM), y, width: column, height: high };
      put(cellInk(row.picture, words, box, { unit, widthOf: brush.widthOf, set: sets[print] }));
    });
    y += high + BETWEEN_MM;
  }
  return new Uint8Array(pdf.output('arraybuffer'));
}

const titleOf = (sheet: NumbersSheet, say: Say): string =>
  say('sheet.title', { whose: say('screen.making.whose', { name: sheet.toy, garment: namesOf(sheet, say) }) });

const namesOf = ({ garments }: NumbersSheet, say: Say): string =>
  say('list.row', { of: garments.map((id) => say(`garment.${id}.name`)) });

type Row = NumbersSheet['rows'][number];
type Cell = { readonly row: Row; readonly at: number };

export function headOf(sheet: NumbersSheet, say: Say): readonly Paragraph[] {
  const first = sheet.marks.map((mark) => say(`screen.marks.${mark}`));
  return [
    { text: titleOf(sheet, say), bold: true, large: 1.8 },
    { text: say('sheet.how'), before: 1 },
    ...(first.length > 0 ? [{ text: inTurn([...first, say('screen.marks.care')], say), before: 1 }] : []),
  ];
}

/** Rows side by side; where the toy is turned a new band begins. */
function bandsOf(
  { rows }: NumbersSheet,
  columns: number,
): { readonly cells: readonly Cell[]; readonly turn: string | null }[] {
  const bands: { cells: Cell[]; turn: string | null }[] = [];
  rows.forEach((row, index) => {
    const last = bands.at(-1);
    if (!last || row.turn || last.cells.length === columns)
      bands.push({ cells: [{ row, at: index + 1 }], turn: row.turn });
    else last.cells.push({ row, at: index + 1 });
  });
  return bands;
}

const wordsIn = ({ row, at }: Cell, column: Mm, print: Print, say: Say, widthOf: TextWidth): Setting =>
  setIn(rowWords(row, at, say), sets[print].text, column - sets[print].picture.width - BETWEEN_MM / 2, widthOf);

/** What is measured, and how. */
export const rowWords = (row: Row, at: number, say: Say): readonly Paragraph[] => [
  { text: say('list.at', { at, name: say(`measure.${row.measure}.name`) }), bold: true, large: 1.15 },
  { text: say(row.how), before: 0.4 },
];

/** A row's picture alone, as large as its own frame. */
export const rowInk = ({ picture }: Row): readonly Ink[] => figureInk(picture, LOOKS, (at) => at);

/** What stands behind a line to write on, as the language writes it. */
type Written = { readonly unit: string; readonly widthOf: TextWidth; readonly set: Set };

function cellInk(drawn: DrawnFigure, words: Setting, box: Box, { unit, widthOf, set }: Written): readonly Ink[] {
  const { picture, writing, text: size } = set;
  const leftwards = widthOf.direction === 'rtl';
  const room = box.width - picture.width - BETWEEN_MM / 2;
  const beside = leftwards ? box.x : box.x + picture.width + BETWEEN_MM / 2;
  const frame = { ...box, ...picture, x: leftwards ? box.x + box.width - picture.width : box.x };
  const foot = box.y + Math.max(words.height + writing.height, picture.height) - 1;
  const scale = Math.min(picture.width / drawn.frame.width, picture.height / drawn.frame.height);
  const to = ({ x, y }: Point): Point => point(frame.x + x * scale, box.y + y * scale);
  const start = point(leftwards ? box.x + room - writing.width : beside, foot);
  const end = point(start.x + writing.width, foot);
  const behind = leftwards ? start.x - 1.5 - widthOf(unit, size, false) : end.x + 1.5;
  return [
    ...clippedInk(figureInk(drawn, LOOKS, to), frame, widthOf),
    stroke('marks', 'trim', edgeOf(frame)),
    ...wordsOf(words, { ...box, x: beside, width: room }, 'words'),
    stroke('marks', 'rule', [line(start, end)]),
    { kind: 'words', layer: 'words', at: point(behind, foot), turn: 0, size, bold: false, text: unit },
  ];
}

function edgeOf({ x, y, width, height }: Box): Path {
  const [right, bottom] = [x + width, y + height];
  return polyline([point(x, y), point(right, y), point(right, bottom), point(x, bottom), point(x, y)]);
}
