import { describe, expect, test } from 'vitest';
import { formatLength, parseLength } from '../../app/body';
import { fieldText, printed } from '../../app/parts';
import { type Key, pressAnew, pressKey, sixteenthsIn } from '../../app/parts/keys';
import { neighbourCell, padCells } from '../../app/parts/pad-cells';

const inches = { unit: 'in', locale: 'en-US' } as const;
const centimetres = { unit: 'cm', locale: 'de-DE' } as const;
const say = (code: string) => code;

const digit = (face: string): Key => ({ press: 'digit', digit: face });
const eighth = (count: number): Key => ({ press: 'eighth', count });
const sixteenth: Key = { press: 'sixteenth' };
const erase: Key = { press: 'erase' };
const point: Key = { press: 'point', mark: ',' };

const press = (start: string, ...keys: readonly Key[]) => keys.reduce(pressKey, start);

describe('the keys', () => {
  test.each([
    ['digits follow each other', press('', digit('1'), digit('7')), '17'],
    ['a fraction follows the digits', press('17', eighth(4)), '17½'],
    ['digits go before a fraction pressed first', press('', eighth(4), digit('8')), '8½'],
    ['another fraction takes the place of the first', press('8½', eighth(1)), '8⅛'],
    ['the same fraction again takes it away', press('8½', eighth(4)), '8'],
    ['a sixteenth more than a fraction', press('8½', sixteenth), '8 9⁄16'],
    ['a sixteenth alone', press('', sixteenth), '1⁄16'],
    ['the sixteenth again takes it away', press('8 9⁄16', sixteenth), '8½'],
    ['erasing takes the fraction first', press('8 9⁄16', erase), '8'],
    ['and then the digits', press('17', erase, erase, erase), ''],
    ['a point before anything stands after a nought', press('', point), '0,'],
    ['a second point is not heard', press('14,5', point), '14,5'],
    ['no point after a fraction', press('8½', point), '8½'],
    ['a millimetre more', press('14,9', { press: 'millimetre', by: 1 }), '15,0'],
    ['a millimetre less, never below nothing', press('', { press: 'millimetre', by: -1 }), '0.0'],
  ])('%s', (_, text, wanted) => {
    expect(text).toBe(wanted);
  });

  test('what was typed in another way is added to and cut at its end, never lost', () => {
    expect(press('5 1/2', digit('3'))).toBe('5 1/23');
    expect(press('14.5 cm', erase)).toBe('14.5 c');
    expect(sixteenthsIn('5 1/2')).toBe(0);
  });

  test('write only what reads back as the same length', () => {
    for (let sixteenths = 1; sixteenths <= 320; sixteenths++) {
      const mm = (sixteenths * 25.4) / 16;
      const parsed = parseLength(fieldText(mm, inches), inches);
      expect(parsed, fieldText(mm, inches)).toEqual({ ok: true, mm: expect.closeTo(mm, 9) });
    }
    expect(parseLength(fieldText(145, centimetres), centimetres)).toEqual({ ok: true, mm: 145 });
  });

  test('stay where they are when the unit changes, and every arrow that leads somewhere leads back', () => {
    const opposite: Readonly<Record<string, string>> = {
      ArrowLeft: 'ArrowRight',
      ArrowRight: 'ArrowLeft',
      ArrowUp: 'ArrowDown',
      ArrowDown: 'ArrowUp',
    };
    const [first, second] = padCells('', inches, say);
    expect(padCells('', centimetres, say)[0]).toEqual(first);
    expect(padCells('', centimetres, say)[1]?.slice(0, 5)).toEqual(second?.slice(0, 5));
    const rows = padCells('', inches, say);
    for (const { id } of rows.slice(0, 2).flat()) {
      for (const [arrow, back] of Object.entries(opposite)) {
        const next = neighbourCell(rows.slice(0, 2), id, arrow);
        if (next) expect(neighbourCell(rows.slice(0, 2), next, back), `${id} ${arrow}`).toBe(id);
      }
    }
  });
});

describe('fractions as printed on a tape', () => {
  test.each([
    ['8 1/2 in', '8½\u00a0in'],
    ['16 11/16 in', '16\u00a011⁄16\u00a0in'],
    ['7/8 in', '⅞\u00a0in'],
    ['± 1/16 in', '± 1⁄16\u00a0in'],
    ['is 14.5 cm, or 3 indigo', 'is 14.5\u00a0cm, or 3 indigo'],
    ['24.11.2026', '24.11.2026'],
    ['page 1/3 of 1/20', 'page 1/3 of 1/20'],
    ['11/12/2026', '11/12/2026'],
  ])('%s', (text, wanted) => {
    expect(printed(text)).toBe(wanted);
  });

  test('still read back as the same length', () => {
    expect(parseLength(printed(formatLength(427.0375, inches)), inches)).toEqual(parseLength('16 13/16', inches));
  });
});

describe('on a number kept before', () => {
  test.each([
    ['a digit begins anew', { press: 'digit', digit: '2' }, '2'],
    ['so does a fraction', { press: 'eighth', count: 6 }, '¾'],
    ['and a point', { press: 'point', mark: '.' }, '0.'],
    ['erasing takes it away', { press: 'erase' }, ''],
    ['a sixteenth moves it', { press: 'sixteenth' }, '7 9⁄16'],
  ] as const)('%s', (_, key, wanted) => expect(pressAnew('7½', key)).toBe(wanted));

  test('a millimetre moves it', () => expect(pressAnew('14.5', { press: 'millimetre', by: 1 })).toBe('14.6'));
});
