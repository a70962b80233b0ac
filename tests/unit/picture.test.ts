import { describe, expect, it } from 'vitest';
import { isFitToKeep, isFitToOpen, pictureSize } from '../../app/picture';
import { claims } from '../photos/claims';
import small from '../photos/small-pictures.json';
import { seeded } from '../toys/seeded';

const bytesOf = (base64: string) => Uint8Array.from(Buffer.from(base64, 'base64'));

describe('the size of a picture', () => {
  it.each(Object.entries(small))('of %s, as another program wrote it, is read', (name, base64) => {
    const type = `image/${name.replace(/.*\./, '').replace('jpg', 'jpeg')}`;
    expect(pictureSize(bytesOf(base64))).toEqual({ type, width: 37, height: 23 });
  });

  it.each(Object.entries(claims))('that a %s claims is read, and judged', (_, { type, of }) => {
    for (const [width, height] of [
      [1, 1],
      [640, 480],
      [12_000, 9_000],
      [16_383, 1],
    ] as const)
      expect(pictureSize(of(width, height))).toEqual({ type, width, height });
    const judged = (width: number, height: number) => {
      const size = pictureSize(of(width, height));
      return size ? [isFitToKeep(size), isFitToOpen(size)] : 'none';
    };
    expect(judged(2_000, 2_000)).toEqual([true, true]);
    expect(judged(2_001, 2_000)).toEqual([false, true]);
    expect(judged(8_000, 6_250)).toEqual([false, true]);
    expect(judged(8_001, 6_250)).toEqual([false, false]);
  });

  it.each(['png', 'jpeg'] as const)('of a %s of nothing, or longer than any screen, is refused', (kind) => {
    const { of } = claims[kind];
    expect(pictureSize(of(0, 10))).toBeNull();
    const long = pictureSize(of(40_000, 1));
    expect(long && isFitToOpen(long)).toBe(false);
  });

  it('is never read from what is none, is cut short or damaged; never hangs or throws', () => {
    const random = seeded(7);
    let read = 0;
    const files = [...Object.values(small).map(bytesOf), ...Object.values(claims).map(({ of }) => of(37, 23))];
    for (const file of files)
      for (let length = 0; length < Math.min(file.length, 400); length++) {
        const size = pictureSize(file.subarray(0, length));
        if (size) expect([size.width, size.height]).toEqual([37, 23]);
      }
    for (let turn = 0; turn < 20_000; turn++) {
      const file = Uint8Array.from(files[turn % files.length]?.subarray(0, 4000) ?? []);
      for (let change = 0; change < 1 + random() * 4; change++)
        file[Math.floor(random() ** 2 * file.length)] = Math.floor(random() * 256);
      const size = pictureSize(file);
      if (!size) continue;
      expect(size.width * size.height).toBeGreaterThan(0);
      read++;
    }
    expect(read).toBeGreaterThan(1000);
    for (const none of [
      '',
      '<svg/>',
      '{"format":"hemling-card"}',
      'BM',
      '%PDF-1.7',
      '\u0000\u0000\u0000\u0000ftypavif',
    ])
      expect(pictureSize(new TextEncoder().encode(none))).toBeNull();
  });
});
