import { describe, expect, it } from 'vitest';
import { formatLength, inchParts, millimetreFace, parseLength } from '../../app/body';

const inch = { unit: 'in', locale: 'en' } as const;
const metric = { unit: 'cm', locale: 'en' } as const;
const IN = 25.4; // international yard and pound agreement, 1959

describe('lengths as people write them', () => {
  it.each([
    '5 1/2',
    '5½',
    '5 ½',
    '5.5',
    '5,5',
    '5-1/2',
    '5 - 1/2',
    '5 1/2"',
    '5 1⁄2',
    '5 1/2 in',
    '5 1/2in',
    '5½″',
    "5½''",
    '5 8/16',
    ' 5 1/2 inches ',
    '５ １/２',
    '٥ ١/٢',
    '5\u00a01/2',
    '5½ Zoll',
    '5½ po',
    '5½ pulg.',
    '5½インチ',
    '13,97 cm',
    '139.7mm',
    '+5.5',
    '5+1/2',
    '5–1/2',
    '5 1∕2',
    '5 1/2”',
  ])('%s is five and a half inches', (text) => {
    const read = parseLength(text, inch);
    expect(read.ok && read.mm).toBeCloseTo(5.5 * IN, 9);
  });

  it.each([
    ['1¼', 1.25],
    ['11¼', 11.25],
    ['¾', 0.75],
    ['7/8', 0.875],
    ['2⅜', 2.375],
    ['12', 12],
    ['0.5', 0.5],
    ['.5', 0.5],
    ['5.', 5],
  ])('%s is %d inches, although Unicode would make 11⁄4 of 1¼', (text, inches) => {
    const read = parseLength(text, inch);
    expect(read.ok && read.mm).toBeCloseTo(inches * IN, 9);
  });

  it.each([
    ['14,5', 145],
    ['14.5 cm', 145],
    ['145 mm', 145],
    ['14½', 145],
    ['5 in', 127],
    ['5"', 127],
  ])('%s is %d mm where centimetres are meant', (text, mm) => {
    expect(parseLength(text, metric)).toEqual({ ok: true, mm });
  });

  it('reads a mark by the language only where it could group thousands', () => {
    expect(parseLength('1,250 mm', metric)).toEqual({ ok: true, mm: 1250 });
    expect(parseLength('1,250 mm', { unit: 'cm', locale: 'de' })).toEqual({
      ok: true,
      mm: 1.25,
    });
    expect(parseLength('1.250 mm', { unit: 'cm', locale: 'de' })).toEqual({
      ok: true,
      mm: 1250,
    });
    expect(parseLength('1.250,5 mm', metric)).toEqual({ ok: true, mm: 1250.5 });
  });

  it.each([
    ['', 'length.empty'],
    ['   ', 'length.empty'],
    ['abc', 'length.letters'],
    ['5 x', 'length.letters'],
    ['5 1/', 'length.unfinished'],
    ['1/0', 'length.nothing-below'],
    ['5 1/0', 'length.nothing-below'],
    ['0', 'length.zero'],
    ['0/4', 'length.zero'],
    ['-3', 'length.negative'],
    ['−3', 'length.negative'],
    ['9999', 'length.too-long'],
    ['0.01', 'length.too-short'],
    ['51/2', 'length.improper'],
    ['11⁄4', 'length.improper'],
    ['1.2.3', 'length.unclear'],
    ['1/2/3', 'length.unclear'],
    ['5 5', 'length.unclear'],
    ['"', 'length.unclear'],
    ['1e3', 'length.letters'],
    ['NaN', 'length.letters'],
    ['Infinity', 'length.letters'],
    ['0x1f', 'length.letters'],
    ['/2', 'length.unclear'],
    ['once\nupon', 'length.paragraph'],
    ['a maker sat at her table and measured a toy', 'length.paragraph'],
  ])('%j is refused as %s', (text, code) => {
    expect(parseLength(text, inch)).toEqual({ ok: false, code });
  });
});

describe('lengths shown', () => {
  it('rounds to the nearest sixteenth and reduces it', () => {
    expect(formatLength(139.7, inch)).toBe('5 1/2\u00a0in');
    expect(formatLength(139.7, inch, true)).toBe('5 1/2');
    expect(formatLength(5.97 * IN, inch, true)).toBe('6');
    expect(formatLength(0.4 * IN, inch, true)).toBe('3/8');
    expect(inchParts(5.4375 * IN)).toEqual({
      whole: 5,
      sixteenths: 7,
      fraction: { above: 7, below: 16 },
    });
    expect(inchParts(0.1)).toEqual({ whole: 0, sixteenths: 0, fraction: null });
  });

  it('rounds to the nearest millimetre, in the language', () => {
    expect(formatLength(144.6, metric)).toBe('14.5\u00a0cm');
    expect(formatLength(144.6, { unit: 'cm', locale: 'de' })).toBe('14,5\u00a0cm');
    expect(formatLength(1450, metric, true)).toBe('145');
  });

  it.each(['en', 'es', 'fr', 'de', 'ja', 'ar'])('reads back what it shows, in %s', (locale) => {
    for (const unit of ['in', 'cm'] as const)
      for (let mm = 2; mm < 3000; mm += 7.3)
        for (const bare of [true, false]) {
          const read = parseLength(formatLength(mm, { unit, locale }, bare), {
            unit,
            locale,
          });
          const step = unit === 'in' ? IN / 16 : 1;
          expect(read.ok && read.mm, formatLength(mm, { unit, locale }, bare)).toBeCloseTo(
            Math.round(mm / step) * step,
            6,
          );
        }
  });
});

it('calls millimetres as the language does', () => {
  expect(['en-GB', 'de', 'ja', 'ar'].map(millimetreFace)).toEqual(['mm', 'mm', 'mm', 'مم']);
});
