import { type Card, type Hand, measures, type Say } from '../../body';
import { bodyFrom, figure, settle } from '../../measuring';
import { shownLength } from '../fractions';
import { sayFirst } from '../say';
import { type CardDrawing, COLOURS, type Mark, type Writing, widthOf } from './drawing';
import { toyShapes } from './looks';

/** A QR's modules, `dark[row][column]`, without the white round it. */
export type Modules = readonly (readonly boolean[])[];

type Asked = {
  readonly card: Card;
  readonly modules: Modules;
  readonly say: Say;
  readonly locale: string;
  readonly rightToLeft: boolean;
};

const WIDTH = 1080;
const EDGE = 56;
const INNER = WIDTH - 2 * EDGE;
const GAP = 40;
/** The two squares under the name: the toy, and the QR on white with the four modules of quiet that it needs. */
const SQUARE = (INNER - GAP) / 2;
const SQUARES_TOP = 196;
const QUIET = 4;

/** A card as a picture to be sent: whose it is, the toy as its numbers make it, the QR that carries it, and the numbers. */
export function drawCard(asked: Asked): CardDrawing {
  const { card, say, rightToLeft } = asked;
  const caption = wrapped(say('card.scan'), INNER / 26).map((line, row) =>
    write(line, EDGE, SQUARES_TOP + SQUARE + 42 + row * 34, { size: 26, colour: COLOURS.pencil }),
  );
  const table = tableOf(asked, SQUARES_TOP + SQUARE + 106 + caption.length * 34);
  const height = Math.round(table.bottom + 84);
  const left = rightToLeft ? WIDTH - EDGE - SQUARE : EDGE;
  const right = rightToLeft ? EDGE : WIDTH - EDGE - SQUARE;
  const { title, about } = cardWords(asked);
  const marks: Mark[] = [
    ...tapeEdge(),
    write(title, EDGE, 120, { size: 68, heavy: true }),
    write(about, EDGE, 166, {
      size: 30,
      colour: COLOURS.pencil,
    }),
    block(left, SQUARES_TOP, SQUARE, SQUARE, COLOURS.sheet),
    ...toyIn(card, left),
    block(right, SQUARES_TOP, SQUARE, SQUARE, COLOURS.white),
    qrIn(asked.modules, right),
    ...caption,
    ...table.marks,
    write(say('card.from'), EDGE, height - 36, { size: 24, colour: COLOURS.pencil }),
  ];
  return { width: WIDTH, height, rightToLeft, paper: COLOURS.paper, marks: rightToLeft ? marks.map(mirrored) : marks };
}

/** All that stands on a card in words, in the order of the picture. */
export function cardWords({ card, say, locale }: Pick<Asked, 'card' | 'say' | 'locale'>) {
  const taken = say('card.taken', { date: card.taken });
  return {
    title: card.toy.name || say('card.nameless'),
    about: say('list.beside', { one: say(`body.${card.toy.body}.name`), two: taken }),
    rows: rowsOf({ card, say, locale }),
    note: card.note,
  };
}

/** The numbers in the order the tape goes, then how the toy is built, and what is to be made. */
function rowsOf({ card, say, locale }: Pick<Asked, 'card' | 'say' | 'locale'>): readonly (readonly [string, string])[] {
  const hand: Hand = { unit: card.unit, locale };
  const numbers = measures.flatMap(({ id }): [string, string][] => {
    const settled = settle(card.readings[id] ?? []);
    return settled ? [[say(`measure.${id}.name`), shownLength(settled.value, hand)]] : [];
  });
  const looks = Object.entries(card.toy.traits).map(([trait, value]): [string, string] => [
    say(`trait.${trait}.name`),
    say(`trait.${trait}.${value}`),
  ]);
  const clothes = (card.orders ?? []).map(({ garment }): [string, string] => [
    say('card.clothes'),
    sayFirst(say, [`garment.${garment}.name`, garment]),
  ]);
  return [...numbers, ...looks, ...clothes];
}

/** The rows in two columns, and the note below. */
function tableOf(asked: Asked, top: number): { marks: Mark[]; bottom: number } {
  const { card } = asked;
  const rows = rowsOf(asked);
  const step = rows.length > 36 ? 40 : 48;
  const most = Math.ceil(rows.length / 2);
  const marks = rows.flatMap(([name, value], at) => {
    const column = at < most ? 0 : 1;
    const x = EDGE + column * (SQUARE + GAP);
    const y = top + (at - column * most) * step;
    const size = step * 0.6;
    return [
      block(x, y + step * 0.28, SQUARE, 1.5, COLOURS.line),
      write(name, x, y, { size, most: SQUARE - 150 }),
      write(value, x + SQUARE, y, { size, side: 'right', heavy: true, most: 140 }),
    ];
  });
  const below = top + most * step + 8;
  const note = card.note === '' ? [] : card.note.split('\n').flatMap((line) => wrapped(line, INNER / 27));
  const lines = note.map((line, at) => write(line, EDGE, below + 20 + at * 36, { size: 27 }));
  return { marks: [...marks, ...lines], bottom: below + (note.length > 0 ? 20 : 0) + note.length * 36 };
}

/** The toy in its square, from the side it is best known by. */
function toyIn(card: Card, left: number): Mark[] {
  const { kind, traits, sizes } = bodyFrom(card);
  const frame = { width: 300, height: 300 };
  const scale = SQUARE / frame.width;
  return toyShapes(
    figure(kind, traits, sizes, kind === 'four-legged' ? 'side' : 'front', frame),
    [left, SQUARES_TOP],
    scale,
  );
}

/** The QR in whole pixels a module, so that no edge is grey. */
function qrIn(modules: Modules, left: number): Mark {
  const scale = Math.max(1, Math.floor(SQUARE / (modules.length + 2 * QUIET)));
  const margin = Math.round((SQUARE - modules.length * scale) / 2);
  const path = modules.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : ''))).join('');
  return {
    is: 'shape',
    path,
    at: [Math.round(left) + margin, Math.round(SQUARES_TOP) + margin],
    scale,
    fill: COLOURS.black,
  };
}

/** A strip of tape along the upper edge. */
function tapeEdge(): Mark[] {
  const ticks = Array.from({ length: 45 }, (_, tick) => `M${12 + tick * 24} 0v${tick % 4 === 0 ? 22 : 13}`).join('');
  return [
    block(0, 0, WIDTH, 34, COLOURS.tape),
    { is: 'shape', path: ticks, at: [0, 0], scale: 1, line: { colour: COLOURS.tapeInk, width: 2 } },
    block(0, 32, WIDTH, 2, COLOURS.tapeInk),
  ];
}

const block = (x: number, y: number, width: number, height: number, fill: string): Mark => ({
  ...{ is: 'shape', path: `M0 0h${width}v${height}h${-width}z`, at: [x, y], scale: 1, fill },
});

type How = Partial<Pick<Writing, 'side' | 'heavy' | 'colour' | 'most'>> & { readonly size: number };

const write = (words: string, x: number, y: number, how: How): Writing => ({
  ...{ is: 'words', words, at: [x, y], side: 'left', heavy: false, colour: COLOURS.ink, most: INNER },
  ...how,
});

/** Writing that runs from the right stands as in a mirror; shapes were placed for it already. */
const mirrored = (mark: Mark): Mark =>
  mark.is === 'shape'
    ? mark
    : { ...mark, at: [WIDTH - mark.at[0], mark.at[1]], side: mark.side === 'left' ? 'right' : 'left' };

/** Lines no wider than so many letter sizes, parted at spaces; a word wider than a line is cut. */
function wrapped(text: string, widest: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').flatMap((each) => cut(each, widest))) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trimStart();
    if (lines.length > 0 && widthOf(longer) <= widest) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function cut(word: string, widest: number): string[] {
  const pieces = [''];
  for (const letter of word) {
    const longer = (pieces.at(-1) ?? '') + letter;
    if (widthOf(longer) <= widest) pieces[pieces.length - 1] = longer;
    else pieces.push(letter);
  }
  return pieces;
}
