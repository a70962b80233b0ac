import { readFileSync } from 'node:fs';
import jsqr from 'jsqr';
import { describe, expect, it } from 'vitest';
import { pixelsOf, planeOf, scaled } from '../../app/sharing/qr/plane';
import { readFrame, readPicture } from '../../app/sharing/qr/read';
import { qrOf } from '../../app/sharing/qr/write';
import { drawnQr, type Pixels, photograph, type Shot } from '../photos/photograph';
import { seeded } from '../toys/random';

/** The link of a full card, and the longest that version 10 holds. */
const usual = readFileSync(new URL('../cards/1/full-thirty.link', import.meta.url), 'utf8').trim();
const longest = `https://hemling-cards.example/for-makers#1${'aB3_'.repeat(43).slice(0, 171)}`;

const degrees = (angle: number) => (angle * Math.PI) / 180;
const independent = ({ data, width, height }: Pixels) => jsqr(data, width, height)?.data ?? null;

/** A photo with `module` pixels a module and a blur of `soft` modules. */
function photo(text: string, module: number, soft: number, more: Partial<Shot> = {}): Pixels {
  const symbol = qrOf(text);
  const across = module * (symbol.size + 8);
  const width = Math.ceil(across * 1.3);
  return photograph(drawnQr(symbol), {
    ...{ width, height: width, share: across / width, blur: soft * module, random: seeded(3) },
    ...more,
  });
}

describe('a QR as we write it', () => {
  it.each([
    ['usual', usual, 7],
    ['longest', longest, 10],
  ])('the %s link: version and size of ISO/IEC 18004, read by a decoder that did not write it', (_, text, version) => {
    const symbol = qrOf(text);
    expect(symbol.version).toBeLessThanOrEqual(version);
    expect(symbol.size).toBe(17 + 4 * symbol.version);
    expect(independent(photo(text, 6, 0))).toBe(text);
    expect(independent(photo(`${text.slice(0, -1)}!`, 6, 0))).not.toBe(text);
  });
});

describe('a photographed QR', () => {
  const poses = [
    ['leaning to the left', { yaw: degrees(25) }],
    ['leaning back', { pitch: degrees(25) }],
    ['leaning to the right, turned', { yaw: degrees(-25), roll: degrees(8) }],
    ['leaning forward, turned', { pitch: degrees(-25), roll: degrees(-15) }],
    ['turned in its plane', { roll: degrees(25) }],
    ['leaning both ways, upside down', { yaw: degrees(18), pitch: degrees(18), roll: degrees(170) }],
  ] as const;
  const poor = { contrast: 0.4, shade: 0.15, noise: 0.01, quality: 50 };

  it.each(poses)(
    '%s, with 0.4 of the contrast and JPEG quality 50, out of focus: both links are read',
    async (_, pose) => {
      for (const text of [usual, longest])
        for (const [module, soft] of [
          [3, 0.25],
          [4.5, 0.4],
        ] as const)
          expect(await readPicture(photo(text, module, soft, { ...poor, ...pose })), `${module} px`).toBe(text);
    },
  );

  // The other decoder misses about one in nine that lean both ways, whoever wrote the symbol: 24 photographs, two writers.
  it('leaning one way: the other decoder reads the same photo, in focus', () => {
    for (const [name, pose] of poses.slice(0, -1))
      expect(independent(photo(usual, 6, 0.15, { ...poor, ...pose })), name).toBe(usual);
  });

  it('is found small in a large photo, and by a camera within four frames', async () => {
    const far = photograph(drawnQr(qrOf(usual)), {
      ...{ width: 900, height: 1200, share: 0.25, yaw: degrees(20), blur: 1.2, random: seeded(4) },
      ...poor,
    });
    expect(await readPicture(far)).toBe(usual);
    const near = photo(usual, 5, 0.4, { ...poor, yaw: degrees(25) });
    expect([0, 1, 2, 3].map((turn) => readFrame(near, turn))).toContain(usual);
  });

  it('is not read where there is none, and passed over where it is not wanted', async () => {
    const empty = planeOf({ width: 200, height: 200, data: new Uint8ClampedArray(200 * 200 * 4).fill(200) });
    expect(await readPicture(pixelsOf(empty))).toBeNull();
    expect(await readPicture(photo('https://example.org/', 6, 0), (text) => text.includes('#1'))).toBeNull();
  });
});

describe('planes', () => {
  const checks = planeOf(photo(usual, 4, 0));
  const mean = (light: Float32Array) => light.reduce((sum, value) => sum + value, 0) / light.length;

  it('keep their light when scaled', () => {
    for (const factor of [0.5, 0.4, 2, 3])
      expect(Math.abs(mean(scaled(checks, factor).light) - mean(checks.light)), `× ${factor}`).toBeLessThan(1);
  });

  it('see what is see-through as white', () => {
    expect([...planeOf({ width: 2, height: 1, data: Uint8ClampedArray.of(0, 0, 0, 0, 0, 0, 0, 255) }).light]).toEqual([
      255, 0,
    ]);
  });
});
