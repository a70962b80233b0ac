// Pieces on cloth, small: the selvages left and right, the length down the page.

import type { Mm, Say, Unit } from '../../body';
import type { Cut, LaidCut, Stuff } from '../cloth';
import { bought } from '../cloth/bought';
import type { Draft } from '../draft-types';
import { type Point, point, polyline } from '../geometry';
import type { Box } from '../packing';
import { arrowHead } from './arrow';
import { centred, type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, smallestOf, stroke, type TextWidth } from './ink';
import { madeFor } from './label';
import type { Lettering } from './lettering';
import { roomIn, wordPages } from './word-pages';

/** Cuts of drafts as they lie on cloth, and the length they take, mm. */
export type LaidOnCloth = {
  readonly drafts: readonly Draft[];
  readonly laid: readonly LaidCut[];
  readonly length: number;
  readonly stuff: Stuff;
};

type Size = { readonly width: Mm; readonly height: Mm };

/** Of the page's height for the lay at most; the rest is for words. */
const LAY_SHARE = 0.66;
const HEAD_MM = 26;
const BETWEEN_MM = 5;
/** The arrow along the cloth, and what is kept beside the lay for it, mm. */
const ARROW_MM = 18;
const ARROW_ROOM_MM = 10;
const WORDS_PT = [11, 10, 9, 8, 7.5, SMALLEST_PT];

export function clothInk(on: LaidOnCloth, page: Size, { say, units, widthOf }: Lettering): readonly Ink[] {
  const room = roomIn(page);
  const head: Box = { ...room, height: HEAD_MM };
  const { ink, height } = layInk(on, { ...room, y: head.y + head.height + BETWEEN_MM }, LAY_SHARE, widthOf);
  const y = head.y + head.height + 2 * BETWEEN_MM + height;
  const names = { ...room, y, height: room.y + room.height - y };
  return [
    ...wordsOf(setWithin(clothHead(on, say, units), head, WORDS_PT, widthOf), head, 'words'),
    ...ink,
    ...wordsOf(setWithin(clothList(on, say), names, WORDS_PT, widthOf), names, 'words'),
  ];
}

/** In large print the words take as many pages as they need, the lay among them. */
export function largeClothInk(on: LaidOnCloth, page: Size, { say, units, widthOf }: Lettering) {
  const room = roomIn(page);
  const lay = (at: { readonly x: Mm; readonly y: Mm }) => layInk(on, { ...room, ...at }, LAY_SHARE, widthOf);
  const parts = [
    ...clothHead(on, say, units),
    { before: BETWEEN_MM, height: lay(room).height + BETWEEN_MM, draw: (at: Point) => lay(at).ink },
    ...clothList(on, say),
  ];
  return wordPages(parts, page, smallestOf(widthOf), widthOf).pages;
}

/** The lay from the top left corner of a room, as large as the room's width and a share of its height allow. */
function layInk({ laid, length, stuff }: LaidOnCloth, room: Box, share: number, widthOf: TextWidth) {
  const cloth = sizeOf(stuff, length);
  const scale = Math.min((room.width - ARROW_ROOM_MM) / cloth.width, (room.height * share) / cloth.length);
  const to = ({ x, y }: Point): Point => ({ x: room.x + (cloth.width - y) * scale, y: room.y + x * scale });
  const edge = ('scrap' in stuff ? stuff.scrap : boxOf(cloth)).map(to);
  const right = room.x + cloth.width * scale + ARROW_ROOM_MM / 2;
  const arrow = polyline([point(right, room.y), point(right, room.y + ARROW_MM)]);
  const ink: readonly Ink[] = [
    stroke('marks', 'rule', ring(edge), true),
    stroke('marks', 'mark', arrow),
    stroke('marks', 'mark', arrowHead(point(right, room.y + ARROW_MM), { x: 0, y: 1 })),
    ...laid.flatMap(({ number, outline, spot }): readonly Ink[] => {
      const shape = ring(outline.map(to));
      return [
        { kind: 'fill', layer: 'marks', grey: 0.92, path: shape },
        stroke('cut', 'rule', shape, true),
        centred(String(number), to(spot), smallestOf(widthOf), true, widthOf),
      ];
    }),
  ];
  return { ink, height: cloth.length * scale };
}

/** Whose clothes they are, and what they take. */
export const clothHead = ({ drafts, length, stuff }: LaidOnCloth, say: Say, units: Unit): readonly Paragraph[] => [
  { text: say('list.row', { of: drafts.map((draft) => madeFor(draft, say)) }), bold: true, large: 1.4 },
  {
    text: say('scrap' in stuff ? 'lay.scrap' : 'lay.takes', {
      length: 'scrap' in stuff ? length : bought(length, units),
      width: sizeOf(stuff, length).width,
      unit: units,
    }),
  },
  { text: say(stuff.nap ? 'lay.nap' : 'lay.no-nap') },
];

/** Which number is which piece, and how many of it there are. */
export function clothList({ drafts, laid }: LaidOnCloth, say: Say): readonly Paragraph[] {
  const kinds = [...new Map(laid.map(({ cut, number }) => [number, cut]))].sort(([one], [other]) => one - other);
  const countOf = (number: number) => laid.filter((each) => each.number === number).length;
  return kinds.map(([number, cut]) => ({ text: `${number}  ${nameOf(cut, drafts, say)} × ${countOf(number)}` }));
}

/** A piece's name, and whose it is where there are several toys or garments. */
function nameOf(cut: Cut, drafts: LaidOnCloth['drafts'], say: Say): string {
  const draft = drafts[cut.draft];
  const name = say(`piece.${draft?.pieces[cut.piece]?.name}`);
  return draft && drafts.length > 1 ? say('list.aside', { name, what: madeFor(draft, say) }) : name;
}

function sizeOf(stuff: LaidOnCloth['stuff'], length: Mm): { readonly length: Mm; readonly width: Mm } {
  if (!('scrap' in stuff)) return { length, width: stuff.width };
  return { length: Math.max(...stuff.scrap.map(({ x }) => x)), width: Math.max(...stuff.scrap.map(({ y }) => y)) };
}

const boxOf = ({ length, width }: { readonly length: Mm; readonly width: Mm }): readonly Point[] => [
  { x: 0, y: 0 },
  { x: length, y: 0 },
  { x: length, y: width },
  { x: 0, y: width },
];

const ring = (points: readonly Point[]) => polyline([...points, ...points.slice(0, 1)]);
