import { expect, test } from 'vitest';
import { judge, type MeasureId, usualTraits } from '../../app/body';

/** The codes said of a few readings that go together but for the rule. */
function saidOf(...taken: readonly (readonly [MeasureId, number])[]): readonly string[] {
  const sizes = Object.fromEntries(taken.map(([id, value]) => [id, { value, from: 'tape', give: 1 } as const]));
  return judge({ kind: 'upright', traits: usualTraits, sizes, corrections: {} }, {}).map(({ code }) => code);
}

test.each([
  [74, true],
  [76, false],
  [299, false],
  [301, true],
])('a paw of %d on an arm of 150: half the arm to twice the arm', (paw, said) =>
  expect(
    saidOf(['paw-girth', paw], ['upper-arm-girth', 150], ['arm-root-girth', 1.1 * Math.sqrt(150 * paw)]).includes(
      'paw-off-arm',
    ),
  ).toBe(said),
);

test.each([
  [119, true],
  [121, false],
  [329, false],
  [331, true],
])('a crown of %d over a face edge of 300: 40 to 110 %% of it', (crown, said) =>
  expect(saidOf(['crown-arc', crown], ['face-edge', 300]).includes('crown-off-face')).toBe(said),
);
