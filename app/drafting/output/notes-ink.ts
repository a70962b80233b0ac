// What a beginner asks of the paper: what to have at hand, what to mind, what was changed for this toy, care; and under it the key.

import { inTurn, longestTie, type Say, type Unit } from '../../body';
import type { Draft } from '../draft-types';
import { notionWords } from '../notions/words';
import { garmentsIn } from '../outfit';
import type { Box } from '../packing';
import type { Form } from '../sheets/forms';
import type { Notes } from '../sheets/layout';
import { APART_MM, keyHeight } from '../sheets/notes';
import { changesTold, notesTold } from '../told';
import { type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT } from './ink';
import { keyInk } from './key-ink';
import { garmentWords } from './label';
import type { Lettering } from './lettering';

const SIZES_PT = [9, 8.5, 8, 7.5, SMALLEST_PT];

export function notesInk(
  draft: Draft,
  { words: box, cared, keyed }: Notes,
  form: Form,
  lettering: Lettering,
): readonly Ink[] {
  const { say, units, widthOf } = lettering;
  const above = keyed ? { ...box, height: box.height - keyHeight(box.width) - APART_MM } : box;
  const set = setWithin([...told(draft, say, units), ...(cared ? care(say, units) : [])], above, SIZES_PT, widthOf);
  const y = box.y + Math.min(set.height, above.height) + APART_MM;
  const below = { x: box.x, y, width: box.width, height: keyHeight(box.width) };
  return [...wordsOf(set, above, 'words'), ...(keyed ? keyInk(below, form, lettering) : [])];
}

/** The words on care in a box of their own. */
export function careInk(box: Box, { say, units, widthOf }: Lettering): readonly Ink[] {
  return wordsOf(setWithin(care(say, units), box, SIZES_PT, widthOf), box, 'words');
}

/** What to have at hand, what to mind, and what was changed. */
export function told(draft: Draft, say: Say, units: Unit): readonly Paragraph[] {
  const said = [
    { code: 'print.notes-title', sentences: notesTold(draft, say, units) },
    { code: 'print.changed-title', sentences: changesTold(draft, say, units) },
  ];
  return [
    title('notion.title', say),
    ...garmentsIn(draft).flatMap((each) => [
      ...(draft.outfit ? [{ text: garmentWords(each, say), bold: true }] : []),
      ...each.notions.map((notion) => ({ text: notionWords(notion, say, units) })),
    ]),
    ...said.flatMap(({ code, sentences }) =>
      sentences.length > 0 ? [title(code, say), { text: inTurn(sentences, say) }] : [],
    ),
  ];
}

export function care(say: Say, units: Unit): readonly Paragraph[] {
  const child = say('print.care-child', { longest: longestTie(units), unit: units });
  return [title('print.care-title', say), { text: say('list.after', { one: child, two: say('print.care-tools') }) }];
}

const title = (code: string, say: Say): Paragraph => ({ text: say(code), bold: true, before: 1 });
