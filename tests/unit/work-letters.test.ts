import { expect, test } from 'vitest';
import type { Face, FaceId } from '../../app/drafting/faces';
import { withLetters } from '../../app/work/letters';

const picture = { png: new Uint8Array([1]), width: 3, height: 4, below: 1 };
const faceOf = (id: FaceId): Face => ({
  ...{ id, ascent: 0, descent: 0, capHeight: 0, box: [0, 0, 0, 0] },
  ...{ has: () => true, shaped: () => [], cut: () => new Uint8Array() },
});
const means = { open: async (id: FaceId) => faceOf(id), draw: async () => picture };

test('letters are drawn once each, and what needs them is made again with them', async () => {
  const drawn: string[] = [];
  let rounds = 0;
  const made = await withLetters(
    'en',
    ({ glyphs }) => {
      rounds += 1;
      return [glyphs('熊', 12, false), glyphs('熊', 12, false), glyphs('熊', 12, true)];
    },
    {
      ...means,
      draw: async ({ letters, size, bold }) => {
        drawn.push(`${letters} ${size} ${bold}`);
        return picture;
      },
    },
  );
  expect(made).toEqual([picture, picture, picture]);
  expect(drawn).toEqual(['熊 12 false', '熊 12 true']);
  expect(rounds).toBe(2);
});

test('a face comes before pictures, once; the language’s own comes before anything is made', async () => {
  const [opened, drawn]: [FaceId[], string[]] = [[], []];
  const open = async (id: FaceId) => {
    opened.push(id);
    if (id === 'latin') throw new TypeError('no network');
    return faceOf(id);
  };
  const draw = async ({ letters }: { letters: string }) => {
    drawn.push(letters);
    return picture;
  };
  let rounds = 0;
  const made = await withLetters(
    'ja',
    ({ faces, glyphs }) => {
      rounds += 1;
      return [
        faces('japanese')?.id,
        faces('arabic')?.id ?? glyphs('م', 12, false),
        faces('latin') ?? glyphs('Ō', 12, false),
      ];
    },
    { open, draw },
  );
  expect(made).toEqual(['japanese', 'arabic', picture]);
  expect(opened).toEqual(['japanese', 'arabic', 'latin']);
  expect(drawn).toEqual(['Ō']);
  expect(rounds).toBe(3);
});

test('what needs no letters is made once, and what never settles is made all the same', async () => {
  let rounds = 0;
  expect(await withLetters('en', () => ++rounds, means)).toBe(1);
  expect(await withLetters('en', ({ glyphs }) => glyphs('熊', ++rounds, false), means)).toBeUndefined();
});

test('without a canvas letters stay what they are', async () => {
  expect(await withLetters('en', ({ glyphs }) => glyphs('熊', 12, false))).toBeUndefined();
});
