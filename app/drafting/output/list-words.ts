// All there is to know of a garment before the first cut, in words: what to cut, what to have at hand, how it fits, whether it goes on.

import type { Say, Unit } from '../../body';
import type { Draft, Notion } from '../draft-types';
import { clothOf } from '../notions/cloth';
import { notionWords } from '../notions/words';
import { howMany } from '../pieces/how-many';
import { changesTold, notesTold } from '../told';
import type { Paragraph } from './flow';
import { madeFor } from './label';

/** The list of one draft. */
export function listWords(draft: Draft, say: Say, units: Unit): readonly Paragraph[] {
  return [
    { text: madeFor(draft, say), bold: true, large: 1.6, before: 6 },
    {
      text: say('list.beside', {
        one: say('print.date', { date: draft.order.date }),
        two: say('print.made-of', { fit: say(`fit.${draft.order.fit}`), cloth: say(`cloth.${draft.order.cloth}`) }),
      }),
    },
    ...under(
      'print.list.cut',
      draft.pieces.map((piece) => rowOf(say(`piece.${piece.name}`), howMany(piece, false, say))),
    ),
    ...under(
      'notion.title',
      draft.notions.map((notion) => notionWords(notion, say, units)),
    ),
    ...under(
      'print.list.fit',
      draft.fit.map(({ place, body, garment }) =>
        say('print.list.fit-row', { place: say(`place.${place}`), body, garment, unit: units }),
      ),
    ),
    ...under(
      'print.list.goes-on',
      draft.openings.map(({ passes, through, needs, gives }) =>
        say('print.list.opening', {
          what: say(`passes.${passes}`),
          place: say(`place.${through}`),
          needs,
          gives,
          unit: units,
        }),
      ),
    ),
    ...under('print.notes-title', notesTold(draft, say, units)),
    ...under('print.changed-title', changesTold(draft, say, units)),
  ];

  function under(title: string, rows: readonly string[]): readonly Paragraph[] {
    return rows.length > 0 ? [{ text: say(title), bold: true, before: 2.5 }, ...rows.map((text) => ({ text }))] : [];
  }
}

/** What several drafts take together: cloth laid as one, and of all else the sum. */
export function togetherWords(drafts: readonly Draft[], say: Say, units: Unit): readonly Paragraph[] {
  const cloths = clothOf({ pieces: drafts.flatMap(({ pieces }) => pieces) });
  const others = drafts.flatMap(({ notions }) => notions.filter(({ kind }) => kind !== 'cloth'));
  return [
    { text: say('print.list.together', { toys: drafts.map(({ toy }) => toy) }), bold: true, large: 1.6 },
    ...[...cloths, ...summed(others)].map((notion) => ({ text: notionWords(notion, say, units) })),
  ];
}

/** Notions of one kind at one place become one; strips of other widths stay apart. */
function summed(notions: readonly Notion[]): readonly Notion[] {
  const kept = new Map<string, Notion>();
  for (const { count = 1, ...notion } of notions) {
    const key = [notion.kind, notion.place, notion.width, notion.of].join(' ');
    const before = kept.get(key);
    kept.set(key, { ...notion, length: notion.length * count + (before?.length ?? 0) });
  }
  return [...kept.values()];
}

const rowOf = (name: string, how: string): string => `${name}: ${how}`;
