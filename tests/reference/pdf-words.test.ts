import { beforeAll, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import { readFace } from '../../app/command/faces';
import type { Draft } from '../../app/drafting/draft-types';
import { type Direction, facesAtHand } from '../../app/drafting/faces';
import { guideOf } from '../../app/drafting/guide';
import type { Words } from '../../app/drafting/output';
import { before, glossary, stepWords, toGuidePdf } from '../../app/drafting/output/guide-pdf';
import { blankPdf } from '../../app/drafting/output/pdf';
import { pdfBrush } from '../../app/drafting/output/pdf-brush';
import { pencilInk } from '../../app/drafting/output/pencil-ink';
import { toPencilPdf } from '../../app/drafting/output/pencil-pdf';
import { pencilPlan } from '../../app/drafting/pencil';
import { papers } from '../../app/drafting/sheets/papers';
import { demoCards } from '../../app/measuring';
import { createSay, directionOf } from '../../app/words';
import { made } from '../measured/made';
import { type ReadText, readPdf } from './pdf-reading';

const atHand = facesAtHand(readFace);
const card = demoCards.find(({ toy }) => toy.body === 'upright');

/** A garment of a demo toy, who is called in three scripts, one of them a picture. */
function drafted(garment: string): Draft {
  const draft = card && made(card, garment);
  if (!draft) throw new RangeError(garment);
  return { ...draft, toy: 'مريم 🧸 Ōkami' };
}

/** What lies no further up or down stands on one line, mm. */
const SAME_LINE_MM = 0.01;

/** The letters of a line, by the parts it was read in. */
type Line = readonly (readonly string[])[];

const languages = ['ja', 'ar'] as const;
const spoken = new Map<string, Say>();
beforeAll(async () => {
  for (const language of languages) spoken.set(language, await createSay(language));
});

test.each(languages)('the whole pencil plan in %s is read as it was meant', async (language) => {
  const { say, direction } = told(language);
  const draft = drafted('bib');
  const meant: string[] = [];
  const bytes = atHand.make((faces) => {
    const script = { language, direction, faces };
    const { widthOf } = pdfBrush(blankPdf([210, 297], draft, { id: 'widths', title: '', script }), 1, script);
    meant.length = 0;
    for (const plan of pencilPlan(draft, 'cm'))
      for (const page of pencilInk(draft, plan, papers.a4, { say, units: 'cm', widthOf }))
        meant.push(...page.filter((ink): ink is Words => ink.kind === 'words').map(({ text }) => text));
    return toPencilPdf(draft, { say, units: 'cm', script });
  });
  expect(beside(await linesOf(await bytes, direction), meant, direction)).toEqual([]);
  expect(meant.length).toBeGreaterThan(50);
});

test.each(languages)('the whole sewing guide in %s is read as it was meant', async (language) => {
  const { say, direction } = told(language);
  const draft = drafted('simple-top');
  const telling = { say, unit: 'cm', way: 'machine' } as const;
  const guide = guideOf(draft);
  const steps = guide.steps.flatMap((step, index) => stepWords(step, index, telling));
  const meant = [...before(draft, guide, telling), ...steps, ...glossary(guide, telling)].map(({ text }) => text);
  const bytes = await atHand.make((faces) =>
    toGuidePdf(draft, { say, units: 'cm', way: 'machine', script: { language, direction, faces } }),
  );
  // Between a step and the next stand its picture's own words: numbers, and what its pieces are called, perhaps side by side.
  const names = draft.pieces.map(({ name }) => lettersIn(say(`piece.${name}`)).join(''));
  const named = new RegExp(`^(?:${names.join('|')})*$`, 'u');
  const others = beside(await linesOf(bytes, direction), meant, direction, false);
  expect(others.filter((line) => !named.test(line.join('').replace(/\d/gu, '')))).toEqual([]);
});

test('the comparison rejects a line left out, and words in the wrong order', () => {
  const line = (...items: readonly string[]) => items.map((item) => lettersIn(item));
  expect(beside([line('前', '後')], ['前後'], 'ltr')).toEqual([]);
  expect(beside([line('後')], ['前', '後'], 'ltr')).toEqual([['後'], ['missing', '前', '後']]);
  expect(beside([line('後', '前')], ['前後'], 'ltr')).not.toEqual([]);
});

function told(language: (typeof languages)[number]): { readonly say: Say; readonly direction: Direction } {
  const say = spoken.get(language);
  if (!say) throw new RangeError(language);
  return { say, direction: directionOf(language) };
}

/** Letters and figures in their order. Vowel marks stand above and below their line, each by itself: they are looked at elsewhere. */
const lettersIn = (text: string): readonly string[] => text.normalize('NFKC').match(/\p{L}|\d/gu) ?? [];

/** What is read out of a file, a line after the other as they were drawn; of each its parts from where the language begins. */
async function linesOf(bytes: Uint8Array, direction: Direction): Promise<readonly Line[]> {
  const { pages } = await readPdf(bytes);
  const lines: ReadText[][] = [];
  const down = ({ at, turn }: ReadText) => at.y * Math.cos(turn) - at.x * Math.sin(turn);
  const along = ({ at, turn }: ReadText) => at.x * Math.cos(turn) + at.y * Math.sin(turn);
  for (const { texts } of pages)
    for (const each of texts.filter(({ text }) => lettersIn(text).length > 0)) {
      const before = lines.at(-1)?.[0];
      const same = before && texts.includes(before) && Math.abs(down(before) - down(each)) < SAME_LINE_MM;
      if (same) lines.at(-1)?.push(each);
      else lines.push([each]);
    }
  const forth = direction === 'rtl' ? -1 : 1;
  return lines.map((line) =>
    [...line].sort((a, b) => forth * (along(a) - along(b))).map(({ text }) => lettersIn(text)),
  );
}

/**
 * The lines that are not the next of what was meant, and what of that never came. A line has the words and numbers it
 * should; those of the language's own direction are in their order.
 * @param numbers whether a line of numbers alone is meant, or belongs to a picture
 */
function beside(lines: readonly Line[], meant: readonly string[], direction: Direction, numbers = true) {
  const wanted = lettersIn(meant.join(''));
  const own = (words: readonly string[]) =>
    words.filter((word) => /\p{L}/u.test(word) && /\p{Script=Arabic}/u.test(word) === (direction === 'rtl')).join();
  const sorted = (words: readonly string[]) => [...words].sort().join();
  let at = 0;
  const others: (readonly string[])[] = [];
  for (const line of lines) {
    const words = line.flat();
    const next = wanted.slice(at, at + words.length);
    const told = numbers || words.some((word) => /\p{L}/u.test(word));
    const isNext = told && sorted(words) === sorted(next) && own(words) === own(next);
    if (isNext) at += words.length;
    else others.push(words);
  }
  return at === wanted.length ? others : [...others, ['missing', ...wanted.slice(at)]];
}
