import { beforeAll, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import { guideOf, titleOf } from '../../app/drafting/guide';
import { together } from '../../app/drafting/outfit';
import { toTwin } from '../../app/drafting/output';
import { createSay } from '../../app/words';
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

test('an outfit has a heading for each garment, and its parts below', () => {
  const page = toTwin(together([draft, draft]), { say, units: 'in', way: 'hand', language: 'en', direction: 'ltr' });
  expect(unclosed(page)).toEqual([]);
  expect(page.match(/<h3>To cut<\/h3>/g)).toHaveLength(2);
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
