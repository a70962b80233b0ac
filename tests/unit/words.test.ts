import { expect, test } from 'vitest';
import { createSay, nearestLocale, writtenAmount, writtenTime } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';

test('a tag finds the language that serves it', () => {
  expect(['en', 'en-GB', 'EN-us', 'tlh', ''].map(nearestLocale)).toEqual(['en', 'en', 'en', 'en', 'en']);
});

test('lengths are said in the unit given beside them', async () => {
  const say = await createSay('en');
  expect(say('label.allowance.seam', { length: 6.35, unit: 'in' })).toBe('seam 1/4\u00a0in');
  expect(say('label.allowance.hem', { length: 12.7, unit: 'cm' })).toBe('hem 1.3\u00a0cm');
});

test('an amount stands as far from its unit as its language writes it, on one line', () => {
  const hours = (locale: string) => writtenAmount(5, 'hour', locale);
  expect(hours('en')).toBe('5\u00a0hr');
  expect(hours('ja')).toBe('5時間');
  expect(writtenAmount(1.25, 'megabyte', 'ja')).toBe('1.3\u00a0MB');
});

test('a time is hours and minutes, whatever there is of both', () => {
  expect(writtenTime(270, 'en')).toBe('4\u00a0hr 30\u00a0min');
  expect(writtenTime(270, 'ja')).toBe('4時間30分');
  expect([writtenTime(40, 'en'), writtenTime(120, 'en')]).toEqual(['40\u00a0min', '2\u00a0hr']);
});

test('dates are written as the tag writes them, in any time zone', async () => {
  const zone = process.env.TZ;
  for (const tz of ['Pacific/Kiritimati', 'Pacific/Pago_Pago']) {
    process.env.TZ = tz;
    expect((await createSay('en'))('print.date', { date: '2026-11-20' })).toBe('Nov 20, 2026');
    expect((await createSay('en-GB'))('print.date', { date: '2026-11-20' })).toBe('20 Nov 2026');
  }
  process.env.TZ = zone;
  expect((await createSay('en'))('print.date', { date: 'some day' })).toBe('some day');
});

test('plurals follow the count', async () => {
  const say = await createSay('en');
  const line = (count: number) => say('print.cover-line', { garment: 'Cape', date: '2026-01-02', engine: '1', count });
  expect(line(1)).toContain('one page');
  expect(line(3)).toContain('3 pages');
});

test('what a maker types is never read as words of ours', async () => {
  const say = await createSay('en');
  for (const toy of ['$t(piece.front)', '{{garment}}', '<b>&amp;', '$t(print.date, { "date": "x" })'])
    expect(say('label.made-for', { garment: 'Cape', toy })).toBe(`${toy}’s cape`);
});

test('a code without words comes back as it is', async () => {
  expect((await createSay('en'))('piece.nothing-of-the-kind')).toBe('piece.nothing-of-the-kind');
});

test('every piece and line of the demo drafts has words', async () => {
  const say = await createSay('en');
  for (const piece of demoDrafts().flatMap((draft) => draft.pieces)) {
    for (const code of [`piece.${piece.name}`, ...piece.lines.map((line) => `line.${line.name.replace(/-\d+$/, '')}`)])
      expect(say(code)).not.toBe(code);
  }
});

test.each([
  ['en', 'مريم', '\u2068مريم\u2069 is a copy, with all its numbers.'],
  ['en', 'Oat 2', 'Oat 2 is a copy, with all its numbers.'],
  ['ar', 'Oat 2', '\u2068Oat 2\u2069: نسخة بكل المقاسات.'],
  ['ar', 'مريم', 'مريم: نسخة بكل المقاسات.'],
])('in %s a name that runs against the lines is set apart: %s', async (locale, name, words) => {
  expect((await createSay(locale))('screen.toy.copied', { name })).toBe(words);
});

test('names in a row are each set apart, and a unit is never', async () => {
  const [english, arabic] = [await createSay('en'), await createSay('ar')];
  expect(english('print.list.together', { toys: ['مريم', 'Oat'] })).toBe('In all, for: \u2068مريم\u2069, Oat');
  expect(arabic('label.allowance.seam', { length: 10, unit: 'in' })).toContain('بوصة');
});
