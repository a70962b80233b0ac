import { expect, test } from 'vitest';
import { shownLength } from '../../app/parts';
import { likingFrom } from '../../app/screens/shared/defaults';
import type { Settings } from '../../app/storage';
import { createSay, readTag } from '../../app/words';

/** What a store, a browser or another program may say where a language belongs. */
const ODD: readonly unknown[] = [
  ...['en_US', '', ' ', '__proto__', 'constructor', 'toString', 'C', 'POSIX', 'en_US.UTF-8', 'en-', '-', 'x', 'i', '*'],
  ...[
    'und',
    'root',
    'tlh',
    'zz-ZZ',
    'en-US-u-nu-arab',
    'en-u-ca-hebrew',
    'EN',
    'eN-gB',
    'e'.repeat(9),
    'e'.repeat(99_999),
  ],
  ...['en\u0000', '‮ne', '🧸', '{{lng}}', '<b>', 'en,fr', 'en;q=0.9', 'x-private', 'i-klingon', 'zh-min-nan', 'en-x-y'],
  ...[null, undefined, 0, Number.NaN, 17, true, {}, [], ['en'], { toString: 'en' }, Symbol('en'), 1n, () => 'en'],
];
const LISTS: readonly unknown[] = [
  ...ODD,
  [],
  ODD,
  ...ODD.map((each) => [each]),
  ...ODD.map((each) => [each, 'en-GB']),
];

test(`none of ${ODD.length * LISTS.length} odd languages in settings and browser stops the words`, async () => {
  const tags = new Set<string>();
  for (const kept of ODD)
    for (const device of LISTS) tags.add(likingFrom({ locale: kept } as unknown as Settings, device).locale);
  for (const tag of tags) {
    expect(readTag(tag)).toBe(tag);
    const say = await createSay(tag);
    expect(say('screen.toys.measure')).toBe('Measure a toy');
    expect(shownLength(304.8, { unit: 'in', locale: tag })).toBe('12\u00a0in');
    expect(new Intl.DisplayNames([tag], { type: 'language' }).of('en')).toBeTruthy();
  }
});

test('what is meant is heard, what is not is passed over', () => {
  const locale = (kept: unknown, ...device: unknown[]) =>
    likingFrom({ locale: kept } as unknown as Settings, device).locale;
  expect(locale('en_US', 'de')).toBe('en-US');
  expect(locale('', 'en-GB')).toBe('en-GB');
  expect(locale('__proto__', 'tlh', 'en-AU')).toBe('en-AU');
  expect(locale('en-US-u-nu-arab')).toBe('en-US');
});

test('none of the other settings takes what it cannot be', () => {
  for (const odd of ODD) {
    const settings = { unit: odd, theme: odd, paper: odd, halves: odd, 'device-print-correction': odd };
    const liking = likingFrom(settings as unknown as Settings, ['de-DE']);
    expect(liking).toMatchObject({ unit: 'cm', theme: 'auto' });
    expect(typeof liking.paper).toBe('string');
    expect(liking.correction).toBe(1);
  }
  expect(likingFrom({ 'device-print-correction': 1.028 }, ['de']).correction).toBe(1.028);
  expect(likingFrom({ 'device-print-correction': 1.2 }, ['de']).correction).toBe(1);
});
