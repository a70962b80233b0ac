import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chance, shapeOf, stockOf, together } from '../../app/drafting/packing';
import { cornersOf } from '../../app/drafting/pieces/outline';

type Size = { readonly width: number; readonly height: number };

const PAGE = { width: 200, height: 270 };
const HAIR = 1e-6;

const asked = (sizes: readonly Size[], most = 50_000) => {
  const shapes = sizes.flatMap(({ width, height }) =>
    [
      { width, height },
      { width: height, height: width },
    ].map((size) => shapeOf([cornersOf({ x: 0, y: 0, ...size })], 0)),
  );
  const pieces = sizes.map((_, index) => [2 * index, 2 * index + 1]);
  return together(stockOf(shapes, HAIR), pieces, PAGE, most);
};

/** The page cut from edge to edge again and again, so that all parts lie on it. */
function cutUp(parts: number, random: () => number): readonly Size[] {
  let out: readonly Size[] = [{ width: PAGE.width - 1, height: PAGE.height - 1 }];
  while (out.length < parts) {
    const at = Math.floor(random() * out.length);
    out = out.flatMap(({ width, height }, index) => {
      if (index !== at) return [{ width, height }];
      const share = 0.3 + 0.4 * random();
      return random() < 0.5
        ? [share, 1 - share].map((each) => ({ width: width * each, height }))
        : [share, 1 - share].map((each) => ({ width, height: height * each }));
    });
  }
  return out.map(({ width, height }) => ({ width: width - HAIR, height: height - HAIR }));
}

describe('shapes that may not lie together', () => {
  test('are never those that do', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 2, max: 4 }), (seed, parts) => {
        expect(asked(cutUp(parts, chance(seed))).apart).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  test('are three of which every two lie together', () => {
    const three = [110, 112, 114].map((width) => ({ width, height: 140 }));
    for (const [one, other] of [
      [0, 1],
      [1, 2],
      [0, 2],
    ])
      expect(asked(three.filter((_, index) => index === one || index === other)).apart).toBe(false);
    expect(asked(three).apart).toBe(true);
  });

  test('are not found where too little may be looked at', () => {
    const three = [110, 112, 114].map((width) => ({ width, height: 140 }));
    expect(asked(three, 20)).toMatchObject({ apart: false });
  });
});
