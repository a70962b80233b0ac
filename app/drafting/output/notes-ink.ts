// What a beginner asks of the paper: what to have at hand, what was changed for this toy, what lines and notches mean, care.

import { longestTie, type Mm, type Say, type Unit } from '../../body';
import type { Draft } from '../draft-types';
import { line, type Path, point } from '../geometry';
import { notionWords } from '../notions/words';
import type { Box } from '../packing';
import { arrowHead } from './arrow';
import { type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, type pens, SMALLEST_PT, stroke } from './ink';
import type { Lettering } from './lettering';

const SIZES_PT = [9, 8.5, 8, 7.5, SMALLEST_PT];
/** A line of the key: its sample and the room each line takes, mm. */
const SAMPLE_MM = 12;
const KEY_LINE_MM = 3.9;
const BESIDE_MM = 3;
/** Between the words and the key, mm. */
const APART_MM = 1.5;

export function notesInk(draft: Draft, box: Box, { say, units, widthOf }: Lettering): readonly Ink[] {
  const key = samples.length * KEY_LINE_MM;
  const above = { ...box, height: box.height - key - APART_MM };
  const set = setWithin(paragraphs(draft, say, units), above, SIZES_PT, widthOf);
  const top = box.y + Math.min(set.height, above.height) + APART_MM;
  return [
    ...wordsOf(set, above, 'words'),
    ...samples.flatMap(({ code, draw }, index) => {
      const y = top + (index + 0.5) * KEY_LINE_MM;
      const room = {
        x: box.x + SAMPLE_MM + BESIDE_MM,
        y: y - 1.8,
        width: box.width - SAMPLE_MM - BESIDE_MM,
        height: 3.6,
      };
      const words = setWithin([{ text: say(`print.key.${code}`) }], room, SIZES_PT.slice(2), widthOf);
      return [...draw(box.x, y), ...wordsOf(words, room, 'words')];
    }),
  ];
}

function paragraphs(draft: Draft, say: Say, units: Unit): readonly Paragraph[] {
  const title = (code: string): Paragraph => ({ text: say(code), bold: true, before: 1 });
  const changed = draft.adjustments.map(({ code, by }) => say(`adjustment.${code}`, { by: Math.abs(by), unit: units }));
  return [
    title('notion.title'),
    ...draft.notions.map((notion) => ({ text: notionWords(notion, say, units) })),
    ...(changed.length > 0 ? [title('print.changed-title'), { text: [...new Set(changed)].join(' ') }] : []),
    title('print.care-title'),
    { text: `${say('print.care-child', { longest: longestTie(units), unit: units })} ${say('print.care-tools')}` },
  ];
}

type Sample = { readonly code: string; readonly draw: (x: Mm, y: Mm) => readonly Ink[] };

const level = (x: Mm, y: Mm): Path => [line(point(x, y), point(x + SAMPLE_MM, y))];
const pen = (name: keyof typeof pens) => (x: Mm, y: Mm) => [stroke('marks', name, level(x, y))];

/** A notch crosses the allowance, from the line to sew out to the line to cut. */
const notch = (x: Mm, y: Mm, at: readonly Mm[]) =>
  at.map((each) => stroke('marks', 'notch', [line(point(x + each, y - 1.5), point(x + each, y + 1.5))]));

const samples: readonly Sample[] = [
  { code: 'cut', draw: pen('cut') },
  { code: 'seam', draw: pen('seam') },
  { code: 'fold', draw: pen('fold') },
  { code: 'inner', draw: pen('inner') },
  { code: 'notch', draw: (x, y) => notch(x, y, [1, 7, 9.5]) },
  {
    code: 'grain',
    draw: (x, y) => [
      stroke('marks', 'mark', level(x, y)),
      stroke('marks', 'mark', arrowHead(point(x + SAMPLE_MM, y), point(1, 0))),
    ],
  },
];
