import { expect, test } from 'vitest';
import { withPictures } from '../../app/work/letter-pictures';

const picture = { png: new Uint8Array([1]), width: 3, height: 4, below: 1 };

test('letters are drawn once each, and what needs them is made again with them', async () => {
  const drawn: string[] = [];
  let rounds = 0;
  const made = await withPictures(
    (glyphs) => {
      rounds += 1;
      return [glyphs('熊', 12, false), glyphs('熊', 12, false), glyphs('熊', 12, true)];
    },
    async ({ letter, size, bold }) => {
      drawn.push(`${letter} ${size} ${bold}`);
      return picture;
    },
  );
  expect(made).toEqual([picture, picture, picture]);
  expect(drawn).toEqual(['熊 12 false', '熊 12 true']);
  expect(rounds).toBe(2);
});

test('what needs no letters is made once, and what never settles is made all the same', async () => {
  let rounds = 0;
  expect(await withPictures(() => ++rounds)).toBe(1);
  const restless = await withPictures(
    (glyphs) => glyphs('熊', ++rounds, false),
    async () => picture,
  );
  expect(restless).toBeUndefined();
});

test('without a canvas letters stay what they are', async () => {
  expect(await withPictures((glyphs) => glyphs('熊', 12, false))).toBeUndefined();
});
