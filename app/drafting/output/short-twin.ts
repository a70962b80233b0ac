// What is printed besides the pattern, as pages to read: the words of each paper in the order they stand on it.

import type { Draft } from '../draft-types';
import { guideOf, titleOf, type Way } from '../guide';
import { planTitle } from '../pencil';
import { clothHead, clothInk, clothList, type LaidOnCloth } from './cloth-ink';
import type { Paragraph } from './flow';
import { before, glossary, stepWords } from './guide-pdf';
import { element, escaped } from './markup';
import { headOf, type NumbersSheet, rowInk, rowWords } from './numbers-pdf';
import { list, paragraph, picture, type ReadOptions, readPage } from './read-page';
import { SCENE, sceneInk } from './scene-ink';
import { widthOf } from './svg';
import { gaugeWords, tapeWords } from './tape-ink';
import { pencilParts } from './twin';
import { paperForWords } from './word-pages';

/** Names and what they are, as a card has them. */
export type CardWords = {
  readonly title: string;
  readonly about: string;
  readonly rows: readonly (readonly [name: string, value: string])[];
  readonly note: string;
};

export type ShortTwin =
  | { readonly of: 'tape' }
  | { readonly of: 'numbers'; readonly sheet: NumbersSheet }
  | { readonly of: 'cloth'; readonly laid: LaidOnCloth }
  | { readonly of: 'sewing'; readonly draft: Draft; readonly way: Way }
  | { readonly of: 'pencil'; readonly draft: Draft }
  | { readonly of: 'card'; readonly card: CardWords };

/** One of these papers as HTML. */
export function toShortTwin(what: ShortTwin, options: ReadOptions): string {
  const { say } = options;
  switch (what.of) {
    case 'tape':
      return titled(tapeWords(say), options, set(gaugeWords(say)));
    case 'numbers':
      return titled(
        headOf(what.sheet, say),
        options,
        what.sheet.rows.flatMap((row, index) => numberPart(row, index, options)),
      );
    case 'cloth':
      return clothPage(what.laid, options);
    case 'sewing':
      return sewingPage(what, options);
    case 'pencil':
      return readPage(planTitle(what.draft, say), options, [
        paragraph(say('pencil.how')),
        ...pencilParts(what.draft, options, 2),
      ]);
    case 'card':
      return cardPage(what.card, options);
  }
}

/** A page whose title is the first of some paragraphs. */
const titled = ([title, ...rest]: readonly Paragraph[], options: ReadOptions, parts: readonly string[]): string =>
  readPage(title?.text ?? '', options, [...set(rest), ...parts]);

/** Paragraphs as they are set on paper: what is bold there heads what follows. */
const set = (paragraphs: readonly Paragraph[]): readonly string[] =>
  paragraphs.map(({ text, bold }) => (bold ? element('h2', {}, escaped(text)) : paragraph(text)));

function numberPart(row: NumbersSheet['rows'][number], index: number, options: ReadOptions): readonly string[] {
  const { say } = options;
  return [
    ...set(rowWords(row, index + 1, say)),
    ...(row.turn ? [paragraph(say(`screen.step.turn.${row.turn}`))] : []),
    picture(rowInk(row), row.picture.frame, say(`measure.${row.measure}.name`), options),
  ];
}

function clothPage(laid: LaidOnCloth, options: ReadOptions): string {
  const { say, units } = options;
  const page = paperForWords(laid.drafts[0]?.order.paper ?? '', units);
  return titled(clothHead(laid, say, units), options, [
    list(clothList(laid, say).map(({ text }) => text)),
    picture(clothInk(laid, page, { say, units, widthOf }), page, say('lay.title'), options),
  ]);
}

function sewingPage({ draft, way }: Extract<ShortTwin, { of: 'sewing' }>, options: ReadOptions): string {
  const { say, units } = options;
  const telling = { say, unit: units, way };
  const guide = guideOf(draft);
  return titled(before(draft, guide, telling), options, [
    ...guide.steps.flatMap((step, index) => [
      ...set(stepWords(step, index, telling)),
      picture(sceneInk(step.scene, { x: 0, y: 0, ...SCENE }, say, widthOf), SCENE, titleOf(step, say), options),
    ]),
    ...set(glossary(guide, telling)),
  ]);
}

function cardPage({ title, about, rows, note }: CardWords, options: ReadOptions): string {
  const written = rows.map(([name, value]) =>
    element('tr', {}, element('th', { scope: 'row' }, escaped(name)), element('td', {}, escaped(value))),
  );
  return readPage(title, options, [
    paragraph(about),
    element('table', {}, element('tbody', {}, ...written)),
    ...note.split('\n').filter(Boolean).map(paragraph),
  ]);
}
