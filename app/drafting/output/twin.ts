// What is printed, as a page to read: the same words in order, with headings and lists that a screen reader steps through, and
// pictures whose words stand beside them. One file that asks nothing of a network.

import { longestTie, type Say, type Unit } from '../../body';
import type { Draft } from '../draft-types';
import {
  cutWords,
  guideOf,
  kindWords,
  noteWords,
  settingWords,
  type Telling,
  termsIn,
  termWords,
  titleOf,
  type Way,
} from '../guide';
import { notionWords } from '../notions/words';
import { garmentsIn } from '../outfit';
import { type PencilPiece, pencilPlan } from '../pencil';
import type { Layout } from '../sheets';
import { changesTold, notesTold, type PieceTold, pageTold, pieceTold } from '../told';
import { bagLabelWords } from './bag-label';
import { madeFor } from './label';
import { element, escaped } from './markup';
import { drawingInk } from './pencil-ink';
import { list, paragraph, picture, type ReadOptions, readPage, section } from './read-page';
import { SCENE, sceneInk } from './scene-ink';
import { widthOf } from './svg';
import { testWords } from './test-page-ink';

export type TwinOptions = ReadOptions & {
  readonly way: Way;
  /** How the draft lies on paper: then each page says what is on it. */
  readonly layout?: Layout | undefined;
};

/** How large pictures are, mm, before the page makes room for them. */
const PIECE = { width: 150, height: 120 } as const;
const AROUND_MM = 6;

/** A draft, or the garments of an outfit one after the other, as HTML. */
export function toTwin(draft: Draft, options: TwinOptions): string {
  const { say } = options;
  const title = madeFor(draft, say);
  const several = garmentsIn(draft).length > 1;
  return readPage(title, options, [
    ...garmentsIn(draft).flatMap((each) => garmentParts(each, options, several)),
    section(2, say('screen.print.title'), pagesPart(draft, options)),
    section(
      2,
      say('print.test.title'),
      testWords(say)
        .slice(1)
        .map(({ text }) => paragraph(text)),
    ),
    section(2, say('print.care-title'), [
      paragraph(say('print.care-child', { longest: longestTie(options.units), unit: options.units })),
      paragraph(say('print.care-tools')),
    ]),
  ]);
}

/** Every page of the layout, and what lies on it. */
const pagesPart = (draft: Draft, { say, layout }: TwinOptions): readonly string[] =>
  (layout?.pages ?? []).map((page, index) =>
    section(3, say('screen.print.page', { page: index + 1 }), layout ? [list(pageTold(draft, layout, page, say))] : []),
  );

function garmentParts(draft: Draft, options: TwinOptions, several: boolean): readonly string[] {
  const { say, units } = options;
  const part = (code: string, content: readonly string[]) => section(several ? 3 : 2, say(code), content);
  const telling: Telling = { say, unit: units, way: options.way };
  const guide = guideOf(draft);
  const parts = [
    paragraph(say('print.date', { date: draft.order.date })),
    paragraph(say('print.made-of', { fit: say(`fit.${draft.order.fit}`), cloth: say(`cloth.${draft.order.cloth}`) })),
    part('print.list.cut', [list(guide.cut.map((row) => cutWords(row, say)))]),
    part('notion.title', [list(draft.notions.map((notion) => notionWords(notion, say, units)))]),
    part('print.list.fit', [list(fitWords(draft, say, units))]),
    part('print.list.goes-on', [list(opensWords(draft, say, units))]),
    part('print.notes-title', [list(notesTold(draft, say, units))]),
    part('print.changed-title', [list(changesTold(draft, say, units))]),
    part(
      'print.bag.title',
      bagLabelWords(draft, say).map(({ text }) => paragraph(text)),
    ),
    part('screen.pattern.pieces', [paragraph(say('pencil.how')), ...pencilParts(draft, options, several ? 4 : 3)]),
    part('screen.pattern.sew', [
      paragraph(settingWords(draft, telling)),
      ...guide.steps.map((step, index) =>
        section(several ? 4 : 3, say('list.at', { at: index + 1, name: titleOf(step, say) }), [
          paragraph(kindWords(step, telling)),
          list(step.notes.map((note) => noteWords(note, telling))),
          picture(sceneInk(step.scene, { x: 0, y: 0, ...SCENE }, say, widthOf), SCENE, titleOf(step, say), options),
        ]),
      ),
    ]),
    part('screen.sew.words', [list(termsIn(guide, options.way).map((term) => termWords(term, say)))]),
  ];
  return several ? [section(2, madeFor(draft, say), parts)] : parts;
}

const fitWords = ({ fit }: Draft, say: Say, unit: Unit): readonly string[] =>
  fit.map(({ place, body, garment }) =>
    say('print.list.fit-row', { place: say(`place.${place}`), body, garment, unit }),
  );

const opensWords = ({ openings }: Draft, say: Say, unit: Unit): readonly string[] =>
  openings.map(({ passes, through, needs, gives }) =>
    say('print.list.opening', { what: say(`passes.${passes}`), place: say(`place.${through}`), needs, gives, unit }),
  );

/** Every piece with its picture, its edges and its points, under headings of a level. */
export const pencilParts = (draft: Draft, options: ReadOptions, level: number): readonly string[] =>
  pencilPlan(draft, options.units).flatMap((plan) => piecePart(draft, plan, options, level));

/** A piece: how many, its picture with numbered points, each edge in order, and where every point lies. */
function piecePart(draft: Draft, plan: PencilPiece, options: ReadOptions, level: number): readonly string[] {
  const { say, units } = options;
  const piece = draft.pieces[plan.piece];
  const told = pieceTold(draft, plan, options);
  if (!piece || !told) return [];
  const room = { x: AROUND_MM, y: AROUND_MM, ...PIECE };
  const { ink, bottom } = drawingInk(piece, plan, room, { say, units, widthOf });
  const frame = { width: PIECE.width + 2 * AROUND_MM, height: bottom + AROUND_MM };
  return [
    section(level, told.name, [
      ...told.head.map(paragraph),
      picture(ink, frame, told.name, options),
      list(told.lines),
      pointsTable(told.points, options),
    ]),
  ];
}

function pointsTable({ caption, columns, marks }: PieceTold['points'], { say, units }: ReadOptions): string {
  const head = (scope: 'col' | 'row') => (text: string) => element('th', { scope }, escaped(text));
  const rows = marks.map(({ number, x, y }) => [
    head('row')(String(number)),
    ...[x, y].map((length) => element('td', {}, escaped(say('pencil.bare', { length, unit: units })))),
  ]);
  return element(
    'table',
    {},
    element('caption', {}, escaped(caption)),
    element('thead', {}, element('tr', {}, ...columns.map(head('col')))),
    element('tbody', {}, ...rows.map((row) => element('tr', {}, ...row))),
  );
}
