import { beforeAll, expect, test } from 'vitest';
import type { Flag, Say } from '../../app/body';
import { guideOf, titleOf } from '../../app/drafting/guide';
import { together } from '../../app/drafting/outfit';
import { type NumbersSheet, type ShortTwin, toShortTwin, toTwin } from '../../app/drafting/output';
import { bagLabelWords } from '../../app/drafting/output/bag-label';
import { listWords } from '../../app/drafting/output/list-words';
import { told } from '../../app/drafting/output/notes-ink';
import { layOut } from '../../app/drafting/sheets';
import { pageTold } from '../../app/drafting/told';
import { demoCards } from '../../app/measuring';
import { createSay } from '../../app/words';
import { made } from '../measured/made';
import { demoDrafts } from '../toys/demo-drafts';

let say: Say;
beforeAll(async () => {
  say = await createSay('en');
});

const NAME = '<b>مريم</b> & "Ōkami"';
const [demo] = demoDrafts();
if (!demo) throw new RangeError('no demo toy');
const draft = { ...demo, toy: NAME };
const written = (direction: 'ltr' | 'rtl' = 'ltr') =>
  toTwin(draft, { say, units: 'cm', way: 'machine', language: direction === 'rtl' ? 'ar' : 'en', direction });

test('is one whole page that asks nothing of anybody, its language and direction said', () => {
  const page = written('rtl');
  expect(page).toMatch(/^<!doctype html>\n<html lang="ar" dir="rtl"><head>/);
  expect(page).not.toMatch(/<script|<link|<img|\ssrc=|<b>| on\w+=/);
  expect(unclosed(page)).toEqual([]);
});

test('says every piece, every point and every step, under headings that leave none out', () => {
  const page = written();
  const headings = Array.from(page.matchAll(/<h(\d)>(.*?)<\/h\1>/g), ([, level, words]) => ({
    level: Number(level),
    words,
  }));
  const levels = headings.map(({ level }) => level);
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  expect(levels.every((level, n) => n === 0 || level <= (levels[n - 1] ?? 0) + 1)).toBe(true);
  const words = headings.map((each) => each.words ?? '');
  for (const { name } of draft.pieces) expect(words).toContain(say(`piece.${name}`));
  for (const step of guideOf(draft).steps)
    expect(words.some((each) => each.endsWith(titleOf(step, say).replaceAll("'", '&apos;')))).toBe(true);
  const pictures = Array.from(page.matchAll(/<svg[^>]* role="img" aria-label="([^"]+)"/g));
  expect(pictures).toHaveLength(draft.pieces.length + guideOf(draft).steps.length);
  expect(page.includes('Sewn here: Shoulders (Back)')).toBe(true);
});

test('what was changed stands with its reason, and what to mind, on the sheet, in the list and on the page', () => {
  const card = demoCards.find(({ toy }) => toy.body === 'upright');
  const thick = card && made(card, 'tee', { choices: { armhole: 'raglan' }, cloth: 'polar-fleece' });
  if (!thick) throw new RangeError('no draft');
  const doubt: Flag = { code: 'other', severity: 'unlikely', measures: ['head-girth'], values: {} };
  const one = { ...thick, flags: [...thick.flags, doubt] };
  const [change, note] = [one.adjustments[0], one.flags.find(({ code }) => code === 'thick-cloth')];
  expect(change && note).toBeTruthy();
  const written = [told, listWords].map((words) =>
    words(one, say, 'cm')
      .map(({ text }) => text)
      .join(' '),
  );
  const page = toTwin(one, { say, units: 'cm', way: 'machine', language: 'en', direction: 'ltr' });
  for (const text of [...written, page.replaceAll('&apos;', "'")]) {
    expect(text).toContain(say(`adjustment.${change?.code}`, { by: Math.abs(change?.by ?? 0), unit: 'cm' }));
    expect(text).toContain(say(`because.${change?.because}`));
    expect(text).toContain(say('flag.thick-cloth', { ...note?.values, unit: 'cm' }));
    expect(text).not.toContain(say('flag.other', { first: say('measure.head-girth.name') }));
  }
});

test('says of every page what lies on it: each piece once, or its parts and what joins them', () => {
  const small = { id: 'small', width: 105, height: 148 };
  const layout = layOut(draft, small, { effort: 1, seed: 1 });
  const told = layout.pages.map((page) => pageTold(draft, layout, page, say));
  const page = toTwin(draft, { say, units: 'cm', way: 'machine', language: 'en', direction: 'ltr', layout });
  expect(unclosed(page)).toEqual([]);
  for (const words of told.flat()) expect(page).toContain(`<li>${words.replaceAll("'", '&apos;')}</li>`);
  const about = (name: string, sign: string) =>
    told.flat().filter((words) => words.startsWith(`${say(`piece.${name}`)}${sign}`));
  for (const { name } of draft.pieces)
    expect(Math.min(about(name, ': ').length, 1) + Math.min(about(name, ', one part').length, 1), name).toBe(1);
  const parts = told.filter((words) => words.some((each) => each.includes('one part')));
  expect(parts.length).toBeGreaterThan(1);
  for (const words of parts) {
    expect(words.some((each) => /, one part: row \d of \d, column \d of \d$/.test(each))).toBe(true);
    expect(words.some((each) => /^(To the (left|right)|Above|Below): page [A-Z]\d$/.test(each))).toBe(true);
  }
});

test('says what stands on the label for the bag; one in large print promises no list of pieces', () => {
  const page = written();
  const label = page.slice(page.indexOf(say('print.bag.title'))).replace(/[\u2068\u2069]/g, '');
  const [first] = draft.pieces;
  for (const words of [
    NAME.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;'),
    say('print.bag.pieces', { count: draft.pieces.length }),
    `${say('list.times', { name: say(`piece.${first?.name}`), times: first?.copies ?? 0 })}, `,
  ])
    expect(label).toContain(`<p>${words}`);
  const large = bagLabelWords(draft, say, 'large').map(({ text }) => text);
  expect(large).not.toContain(say('print.bag.pieces', { count: draft.pieces.length }));
  expect(large).toHaveLength(4);
});

test('an outfit has a heading for each garment, and its parts below', () => {
  const page = toTwin(together([draft, draft]), { say, units: 'in', way: 'hand', language: 'en', direction: 'ltr' });
  expect(unclosed(page)).toEqual([]);
  expect(page.match(/<h3>To cut<\/h3>/g)).toHaveLength(2);
});

test('what else is printed has a page too: its words under one title, its pictures told, nothing typed taken for markup', () => {
  const picture = { frame: { width: 10, height: 10 }, shapes: [] };
  const sheet: NumbersSheet = {
    toy: NAME,
    garments: [draft.order.garment],
    marks: ['neck'],
    rows: [{ measure: 'height', how: 'measure.height.how', turn: 'side', picture }],
  };
  const laid = { drafts: [draft], length: 300, stuff: { width: 1100, nap: false }, laid: [] };
  const words = { title: NAME, about: 'a bear', rows: [[NAME, '17 cm']] as const, note: NAME };
  const pages: Readonly<Record<ShortTwin['of'], readonly [what: ShortTwin, says: readonly string[]]>> = {
    tape: [{ of: 'tape' }, [say('tape.gauge-title')]],
    numbers: [{ of: 'numbers', sheet }, [say('measure.height.name'), say('screen.step.turn.side')]],
    cloth: [{ of: 'cloth', laid }, [say('lay.no-nap')]],
    sewing: [{ of: 'sewing', draft, way: 'hand' }, guideOf(draft).steps.map((step) => titleOf(step, say))],
    pencil: [{ of: 'pencil', draft }, draft.pieces.map(({ name }) => say(`piece.${name}`))],
    card: [{ of: 'card', card: words }, ['a bear', '17 cm']],
  };
  for (const [what, says] of Object.values(pages)) {
    const page = toShortTwin(what, { say, units: 'cm', language: 'en', direction: 'ltr' });
    expect(unclosed(page), what.of).toEqual([]);
    expect(page.match(/<h1>/g), what.of).toHaveLength(1);
    expect(page, what.of).not.toMatch(/<script|<link|<img|\ssrc=|<b>| on\w+=/);
    for (const each of says) expect(page, what.of).toContain(each.replaceAll("'", '&apos;'));
  }
});

test('the reader of elements finds one left open, and one closed too early', () => {
  expect(unclosed('<p><b>a</p>')).not.toEqual([]);
  expect(unclosed('<p>a</p></p>')).not.toEqual([]);
});

/** Elements that are not closed where they should be. */
function unclosed(page: string): readonly string[] {
  const open: string[] = [];
  const wrong: string[] = [];
  for (const [, end, name = '', alone] of page.matchAll(/<(\/?)([a-z][\w]*)[^>]*?(\/?)>/g)) {
    if (alone || name === 'meta') continue;
    if (!end) open.push(name);
    else if (open.pop() !== name) wrong.push(name);
  }
  return [...wrong, ...open];
}
