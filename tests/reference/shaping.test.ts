import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Blob, Buffer, Feature, Font, Face as Shaped, shape } from 'harfbuzzjs';
import { expect, test } from 'vitest';
import { readFace } from '../../app/command/faces';
import type { FaceId } from '../../app/drafting/faces';

/** Words as HarfBuzz, the shaper of most browsers, sets them: joined, marks in place, brackets facing the reader. */
const words: readonly (readonly [FaceId, 'ltr' | 'rtl', readonly string[]])[] = [
  [
    'arabic',
    'rtl',
    ['مريم', 'بيت السلام', 'مَرْيَم لا', '(قبعة)', 'معًا أولاً', 'شمّ الأزرار', '١٢٫٥ سم', 'پچگژ', 'قصّ قطعتين، إحداهما'],
  ],
  ['latin', 'ltr', ['Ōkami', 'Đặng Thị Ngọc', 'q\u0301', 'Ёжик', 'Λουλού']],
  ['japanese', 'ltr', ['くまの服、ボタン「留め」。', 'ﾊﾝｶｸ']],
];

test.each(words)('%s is shaped as HarfBuzz shapes it', async (id, direction, texts) => {
  const face = await readFace(id);
  const whole = new Shaped(new Blob(fontOf(id)));
  const font = new Font(whole);
  const hundredths = (each: number) => Math.round(each * 100) / 100 + 0;
  for (const text of texts) {
    const buffer = new Buffer();
    buffer.addText(text);
    buffer.guessSegmentProperties();
    shape(
      font,
      buffer,
      ['kern', 'liga', 'clig'].map((name) => new Feature(name, 0)),
    );
    const theirs = buffer
      .getGlyphInfosAndPositions()
      .map(({ codepoint, xAdvance, xOffset, yOffset }) => [
        codepoint,
        ...[xAdvance, xOffset, yOffset].map((each = 0) => hundredths((each * 1000) / whole.upem)),
      ]);
    const ours = face
      .shaped(text, direction)
      .map(({ id, advance, right, up }) => [id, ...[advance, right, up].map(hundredths)]);
    expect(ours, text).toEqual(theirs);
    const read = face.shaped(text, direction).map(({ text: letters }) => letters);
    expect((direction === 'rtl' ? read.reverse() : read).join('').normalize('NFKC')).toBe(text.normalize('NFKC'));
  }
});

function fontOf(id: FaceId): ArrayBuffer {
  const packages = {
    arabic: ['vazirmatn', 'Vazirmatn'],
    japanese: ['noto-sans-jp', 'NotoSansJP'],
    latin: ['noto-sans', 'NotoSans'],
  };
  const [name, file] = packages[id];
  const path = createRequire(import.meta.url).resolve(`@expo-google-fonts/${name}/400Regular/${file}_400Regular.ttf`);
  return new Uint8Array(readFileSync(path)).buffer;
}
