// A label to cut out and keep with the pieces: whose they are, and how many belong together.

import type { Mm, Say } from '../../body';
import type { Draft } from '../draft-types';
import { polyline } from '../geometry';
import type { Box } from '../packing';
import { cornersOf } from '../pieces/outline';
import type { Print } from '../sheets';
import { type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke } from './ink';
import type { Lettering } from './lettering';
import { wornInk } from './worn-ink';

export const BAG_LABEL = { width: 110, height: 62 } as const;

const INSET_MM = 4;
const PICTURE_MM = 34;
const SIZES_PT = [12, 11, 10, 9, 8, SMALLEST_PT];

/** What it says; in large print how many pieces there are, but not each. */
export function bagLabelWords(draft: Draft, say: Say, print: Print = 'usual'): readonly Paragraph[] {
  const pieces = draft.pieces.map(({ name, copies }) =>
    say('list.times', { name: say(`piece.${name}`), times: copies }),
  );
  const date = say('print.date', { date: draft.order.date });
  const count = draft.pieces.length;
  return [
    { text: say('list.row', { of: [draft.toy] }), bold: true, large: 1.5 },
    { text: say(`garment.${draft.order.garment}.name`), bold: true },
    { text: say('list.beside', { one: say(`cloth.${draft.order.cloth}`), two: date }) },
    ...(print === 'large'
      ? [{ text: say('screen.pattern.pieces-count', { count }), bold: true, before: 1.5 }]
      : [
          { text: say('print.bag.pieces', { count }), bold: true, before: 1.5 },
          { text: say('list.row', { of: pieces }) },
        ]),
  ];
}

/** The label with its corner at x, y. */
export function bagLabelInk(
  draft: Draft,
  at: { readonly x: Mm; readonly y: Mm },
  { say, widthOf, worn }: Lettering,
): readonly Ink[] {
  // Drawn to be magnified: few words, and none of them small.
  const large = widthOf.print === 'large';
  const box: Box = { ...at, ...BAG_LABEL };
  const inside: Box = {
    x: box.x + INSET_MM,
    y: box.y + INSET_MM,
    width: box.width - 2 * INSET_MM - (worn ? PICTURE_MM + INSET_MM : 0),
    height: box.height - 2 * INSET_MM,
  };
  const corners = cornersOf(box);
  const picture = {
    x: box.x + box.width - INSET_MM - PICTURE_MM,
    y: inside.y,
    width: PICTURE_MM,
    height: inside.height,
  };
  const paragraphs = bagLabelWords(draft, say, widthOf.print);
  return [
    stroke('marks', 'trim', polyline([...corners, ...corners.slice(0, 1)])),
    ...wordsOf(setWithin(paragraphs, inside, large ? SIZES_PT.slice(0, 2) : SIZES_PT, widthOf), inside, 'words'),
    ...(worn ? wornInk(worn, picture) : []),
  ];
}
