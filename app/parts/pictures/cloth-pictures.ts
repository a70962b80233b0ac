import type { Picture, Stroke } from './strokes';

const swatch: Stroke = { as: 'cloth', d: 'M10 12h52v48H10z' };
const rows = (count: number, gap: number, draw: (y: number) => string) =>
  Array.from({ length: count }, (_, index) => draw(16 + index * gap)).join('');

/** A swatch of each cloth, as a maker knows it by touch: flat, ribbed, plaid, curly, bumpy. */
export const clothPictures: Readonly<Record<string, Picture>> = {
  'quilting-cotton': [
    swatch,
    { as: 'line', d: rows(4, 12, (y) => `M18 ${y + 2}h3m8 0h3m8 0h3m8 0h3`) },
    { as: 'line', d: rows(3, 12, (y) => `M24 ${y + 8}h3m8 0h3m8 0h3`) },
  ],
  linen: [
    swatch,
    {
      as: 'line',
      d: rows(8, 5.5, (y) => `M12 ${y}h48`) + Array.from({ length: 8 }, (_, i) => `M${16 + i * 6} 14v44`).join(''),
    },
  ],
  lawn: [swatch, { as: 'line', d: rows(4, 11, (y) => [20, 33, 46].map((x) => `M${x} ${y}l3 4 3-4m-3 4v4`).join('')) }],
  satin: [swatch, { as: 'deep', d: 'M22 12h6L14 60h-4v-8zM46 12h10L40 60H30z' }],
  tulle: [
    swatch,
    {
      as: 'line',
      d: [0, 1, 2, 3, 4, 5].map((i) => `M${12 + i * 8} 14l8 44M${20 + i * 8} 14l-8 44`).join(''),
    },
  ],
  'light-denim': [swatch, { as: 'line', d: [0, 1, 2, 3, 4, 5, 6].map((i) => `M${12 + i * 6} ${58}l6-44`).join('') }],
  needlecord: [swatch, { as: 'line', d: [0, 1, 2, 3, 4, 5, 6, 7, 8].map((i) => `M${14 + i * 5.5} 14v44`).join('') }],
  flannel: [swatch, { as: 'deep', d: 'M22 12h8v48h-8zM44 12h8v48h-8zM10 22h52v8H10zM10 44h52v8H10z' }],
  jersey: [swatch, { as: 'line', d: rows(5, 9, (y) => `M14 ${y}l4 5 4-5m2 0 4 5 4-5m2 0 4 5 4-5m2 0 4 5 4-5`) }],
  'sweatshirt-fleece': [swatch, { as: 'line', d: rows(5, 9, (y) => `M14 ${y + 2}q4-5 8 0t8 0 8 0 8 0 8 0`) }],
  'polar-fleece': [
    {
      as: 'cloth',
      d: 'M12 16q3-6 8-3 4-4 8 0 4-4 8 0 4-4 8 0 4-4 8 1 8 0 7 8 4 4 0 8 4 4 0 8 4 4 0 8 2 9-7 9-4 4-8 1-4 4-8 0-4 4-8 0-4 4-8 0-8 4-11-3-5-3-2-8-4-4 0-8-4-4 0-8-4-4 1-8q-3-3 1-5z',
    },
    { as: 'line', d: 'M24 28q4-4 7 0m10 0q4-4 7 0M20 40q4-4 7 0m9 0q4-4 7 0M28 52q4-4 7 0m9-2q4-4 7 0' },
  ],
  felt: [
    {
      as: 'cloth',
      d: 'M10 14l3-2 3 2 3-2 3 2 3-2 3 2 3-2 3 2 3-2 3 2 3-2 3 2 3-2 3 2 3-2 3 2 3-2 2 2v44l-2 2-3-2-3 2-3-2-3 2-3-2-3 2-3-2-3 2-3-2-3 2-3-2-3 2-3-2-3 2-3-2-3 2-3-2-2 2z',
    },
  ],
  minky: [
    swatch,
    {
      as: 'deep',
      d: rows(3, 15, (y) => [17, 31, 45].map((x) => `M${x} ${y + 6}a5 5 0 1 1 10 0a5 5 0 1 1-10 0z`).join('')),
    },
  ],
};
