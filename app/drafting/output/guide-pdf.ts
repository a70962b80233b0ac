import type { Say } from '../../body';
import type { Draft } from '../draft-types';
import { line } from '../geometry';
import {
  CHECK_STRIPS_MM,
  cutWords,
  type Guide,
  type GuideStep,
  guideOf,
  kindWords,
  noteWords,
  settingWords,
  sewsNothing,
  type Telling,
  termsIn,
  termWords,
  titleOf,
  type Way,
} from '../guide';
import { notionWords } from '../notions/words';
import type { Box } from '../packing';
import { type Paragraph, type Setting, setIn, wordsOf } from './flow';
import { type Ink, stroke, type TextWidth } from './ink';
import { madeFor } from './label';
import { largeGuideInk } from './large-guide';
import { blankPdf, drawnPages, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { SCENE, sceneInk } from './scene-ink';
import { paperForWords } from './word-pages';

export type GuidePdfOptions = PdfOptions & { readonly way: Way };

const MARGIN_MM = 14;
const BETWEEN_MM = 6;
const TEXT_PT = 10;
const SMALL_PT = 9;

/** The sewing of a draft as PDF, to lie beside the machine: what to cut first, then every step with its picture. */
export function toGuidePdf(draft: Draft, { say, units, way, script, print }: GuidePdfOptions): Uint8Array {
  const guide = guideOf(draft);
  const { width, height } = paperForWords(draft.order.paper, units);
  const title = guideTitle(draft, say);
  const pdf = blankPdf([width, height], draft, { id: JSON.stringify(['sewing', draft, way, print]), title, script });
  const brush = pdfBrush(pdf, 1, script, print);
  const telling = { say, unit: units, way };
  if (print === 'large') {
    const told = guide.steps.map((step, index) => {
      const [first, ...rest] = stepWords(step, index, telling);
      return { step, title: first, rest };
    });
    const lettering = { say, units, widthOf: brush.widthOf };
    const pages = largeGuideInk(
      before(draft, guide, telling),
      told,
      glossary(guide, telling),
      { width, height },
      lettering,
    );
    return drawnPages(pdf, brush, pages, { width, height });
  }
  const column = { x: MARGIN_MM, width: width - 2 * MARGIN_MM };
  const first = setIn(before(draft, guide, telling), TEXT_PT, column.width, brush.widthOf);
  let y = MARGIN_MM;
  for (const ink of wordsOf(first, { ...column, y, height: first.height }, 'words')) brush.draw(ink);
  y += first.height + BETWEEN_MM;
  guide.steps.forEach((step, index) => {
    const words = setIn(
      stepWords(step, index, telling),
      TEXT_PT,
      column.width - SCENE.width - BETWEEN_MM,
      brush.widthOf,
    );
    const high = Math.max(SCENE.height, words.height);
    if (y + high > height - MARGIN_MM) {
      pdf.addPage([width, height]);
      y = MARGIN_MM;
    }
    for (const ink of stepInk(step.scene, words, { ...column, y, height: high }, telling, brush.widthOf))
      brush.draw(ink);
    y += high + BETWEEN_MM;
  });
  const words = setIn(glossary(guide, telling), SMALL_PT, column.width, brush.widthOf);
  if (y + words.height > height - MARGIN_MM) {
    pdf.addPage([width, height]);
    y = MARGIN_MM;
  }
  for (const ink of wordsOf(words, { ...column, y, height: words.height }, 'words')) brush.draw(ink);
  return new Uint8Array(pdf.output('arraybuffer'));
}

const guideTitle = (draft: Draft, say: Say): string => say('guide.pdf-title', { garment: madeFor(draft, say) });

/** A step's title, and what is done. */
export function stepWords(step: GuideStep, index: number, telling: Telling): readonly [Paragraph, ...Paragraph[]] {
  const { say } = telling;
  return [
    { text: say('list.at', { at: index + 1, name: titleOf(step, say) }), bold: true, large: 1.15 },
    { text: kindWords(step, telling), before: 0.8 },
    ...step.notes.map((note): Paragraph => ({ text: `– ${noteWords(note, telling)}`, before: 0.6 })),
  ];
}

/** The trade's words that the steps speak of, each in a sentence: there is nothing to tap on paper. */
export function glossary(guide: Guide, { say, way }: Telling): readonly Paragraph[] {
  return [
    { text: say('screen.sew.words'), bold: true, large: 1.15 },
    ...termsIn(guide, way).map((term): Paragraph => ({ text: termWords(term, say), before: 0.4 })),
  ];
}

function stepInk(
  scene: Guide['steps'][number]['scene'],
  words: Setting,
  box: Box,
  { say }: Telling,
  widthOf: TextWidth,
): readonly Ink[] {
  const room = box.width - SCENE.width - BETWEEN_MM;
  const leftwards = widthOf.direction === 'rtl';
  const picture = leftwards ? box.x + room + BETWEEN_MM : box.x;
  const beside = leftwards ? box.x : box.x + SCENE.width + BETWEEN_MM;
  const above = box.y - BETWEEN_MM / 2;
  return [
    stroke('marks', 'trim', [line({ x: box.x, y: above }, { x: box.x + box.width, y: above })]),
    ...sceneInk(scene, { ...box, x: picture, ...SCENE }, say, widthOf),
    ...wordsOf(words, { ...box, x: beside, width: room }, 'words'),
  ];
}

/** What is read before the first stitch. */
export function before(draft: Draft, guide: Guide, telling: Telling): readonly Paragraph[] {
  const { say, unit } = telling;
  const scissors = sewsNothing(guide);
  const heading = (code: string): Paragraph => ({ text: say(code), bold: true, before: 2 });
  return [
    { text: guideTitle(draft, say), bold: true, large: 1.7 },
    ...(scissors ? [] : [{ text: settingWords(draft, telling), before: 1 }]),
    heading('screen.sew.cut'),
    ...guide.cut.map((row): Paragraph => ({ text: cutWords(row, say) })),
    { text: say('screen.sew.cut-how'), before: 0.8 },
    heading('notion.title'),
    ...draft.notions.map((notion): Paragraph => ({ text: notionWords(notion, say, unit) })),
    { text: say(`screen.sew.tools-${scissors ? 'scissors' : telling.way}`) },
    ...(scissors
      ? []
      : [
          heading('screen.sew.seam-title'),
          {
            text: say('screen.sew.seam-how', {
              ...CHECK_STRIPS_MM,
              inside: CHECK_STRIPS_MM.width - 2 * CHECK_STRIPS_MM.seam,
              unit,
            }),
          },
        ]),
    heading('screen.care.title'),
    { text: say('list.after', { one: say('screen.sew.care'), two: say('screen.care.rules') }) },
  ];
}
