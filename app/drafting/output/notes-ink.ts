// What a beginner asks of the paper: what to have at hand, what was changed for this toy, care; and under it the key.

import { inTurn, longestTie, type Say, type Unit } from '../../body';
import type { Draft } from '../draft-types';
import { notionWords } from '../notions/words';
import { garmentsIn } from '../outfit';
import type { Form } from '../sheets/forms';
import type { Notes } from '../sheets/layout';
import { APART_MM, keyColumns, keyHeight } from '../sheets/notes';
import { type Paragraph, setWithin, wordsOf } from './flow';
import { type Ink, SMALLEST_PT } from './ink';
import { keyInk } from './key-ink';
import { garmentWords } from './label';
import type { Lettering } from './lettering';

const SIZES_PT = [9, 8.5, 8, 7.5, SMALLEST_PT];

export function notesInk(draft: Draft, { words: box, key }: Notes, form: Form, lettering: Lettering): readonly Ink[] {
  const { say, units, widthOf } = lettering;
  const below = key ? 0 : keyHeight(box.width) + APART_MM;
  const above = { ...box, height: box.height - below };
  const set = setWithin(paragraphs(draft, say, units), above, SIZES_PT, widthOf);
  const y = box.y + Math.min(set.height, above.height) + APART_MM;
  const under = { x: box.x, y, width: box.width, height: keyHeight(box.width) };
  return [
    ...wordsOf(set, above, 'words'),
    ...(key ? keyInk(key, 1, form, lettering) : keyInk(under, keyColumns(box.width), form, lettering)),
  ];
}

function paragraphs(draft: Draft, say: Say, units: Unit): readonly Paragraph[] {
  const title = (code: string): Paragraph => ({ text: say(code), bold: true, before: 1 });
  const changed = draft.adjustments.map(({ code, by }) => say(`adjustment.${code}`, { by: Math.abs(by), unit: units }));
  return [
    title('notion.title'),
    ...garmentsIn(draft).flatMap((each) => [
      ...(draft.outfit ? [{ text: garmentWords(each, say), bold: true }] : []),
      ...each.notions.map((notion) => ({ text: notionWords(notion, say, units) })),
    ]),
    ...(changed.length > 0 ? [title('print.changed-title'), { text: inTurn([...new Set(changed)], say) }] : []),
    title('print.care-title'),
    {
      text: say('list.after', {
        one: say('print.care-child', { longest: longestTie(units), unit: units }),
        two: say('print.care-tools'),
      }),
    },
  ];
}
