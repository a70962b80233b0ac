/** One stroke of a small drawing, in a frame 72 wide and 72 high; `as` names how it is drawn. */
export type Stroke = { readonly as: 'cloth' | 'deep' | 'line' | 'stitch' | 'skin' | 'tape'; readonly d: string };
export type Picture = readonly Stroke[];

const trunk: Stroke = { as: 'cloth', d: 'M26 24c4 4 16 4 20 0l4 36H22z' };
const long: Stroke = {
  as: 'cloth',
  d: 'M26 24C18 28 12 38 8 49l8 4c3-6 6-11 9-14zM46 24c8 4 14 14 18 25l-8 4c-3-6-6-11-9-14z',
};
const short: Stroke = { as: 'cloth', d: 'M26 24c-6 2-10 7-13 12l8 6 4-4zM46 24c6 2 10 7 13 12l-8 6-4-4z' };
const hood: Stroke = { as: 'cloth', d: 'M26 24C14 4 58 4 46 24c-4 4-16 4-20 0z' };
const face: Stroke = { as: 'deep', d: 'M29 23c-5-14 19-14 14 0-3 2-11 2-14 0z' };
const neckOnly: Stroke = { as: 'deep', d: 'M26 24c4-5 16-5 20 0-4 4-16 4-20 0z' };
const top = [long, trunk, hood, face];
const fromBehind = [long, trunk, hood];

const frontOpen: Stroke = { as: 'stitch', d: 'M36 28v32' };
const guess: Stroke = { as: 'tape', d: 'M20 66h32' };

/** Each garment, seen from the front. */
export const garmentPictures: Readonly<Record<string, Picture>> = {
  'hooded-top': top,
  tee: [short, trunk, neckOnly],
  tank: [trunk, neckOnly],
};

/** Each value of each choice: `choice.value`. */
export const choicePictures: Readonly<Record<string, Picture>> = {
  'opening.auto': [...top, guess],
  'opening.none': top,
  'opening.slit': [...top, { as: 'stitch', d: 'M36 28v14' }],
  'opening.front': [...top, frontOpen, { as: 'line', d: 'M33 34h6m-6 8h6m-6 8h6' }],
  'opening.back': [...fromBehind, { as: 'stitch', d: 'M36 10v50' }, { as: 'line', d: 'M33 34h6m-6 8h6m-6 8h6' }],
  'sleeve.long': top,
  'sleeve.short': [short, trunk, hood, face],
  'sleeve.none': [trunk, hood, face, { as: 'stitch', d: 'M24.5 38c-2-6-1-11 1.5-14M47.5 38c2-6 1-11-1.5-14' }],
  'armhole.auto': [...top, guess],
  'armhole.set-in': [...top, { as: 'stitch', d: 'M25 39c4-4 4-11 1-15M47 39c-4-4-4-11-1-15' }],
  'armhole.raglan': [...top, { as: 'stitch', d: 'M25 39c3-4 5-9 6-13M47 39c-3-4-5-9-6-13' }],
  'hood.auto': [
    { as: 'cloth', d: 'M14 60C10 14 58 2 58 34v26z' },
    { as: 'tape', d: 'M20 66h32' },
  ],
  'hood.two': [
    { as: 'cloth', d: 'M14 60C10 14 58 2 58 34v26z' },
    { as: 'stitch', d: 'M18 58C15 20 54 8 54 34' },
  ],
  'hood.three': [
    { as: 'cloth', d: 'M14 60C10 14 58 2 58 34v26z' },
    { as: 'deep', d: 'M14 60C10 14 58 2 58 34l-7 2C50 14 20 20 23 60z' },
    { as: 'stitch', d: 'M23 60C20 20 50 14 51 36' },
  ],
  'hem.turned': [
    { as: 'cloth', d: 'M10 14h52v44H10z' },
    { as: 'deep', d: 'M10 46h52v12H10z' },
    { as: 'stitch', d: 'M12 48h48' },
  ],
  'hem.casing': [
    { as: 'cloth', d: 'M10 14h52l-6 28 4 6-4 10H16l-4-10 4-6z' },
    { as: 'stitch', d: 'M17 43h38M17 56h38' },
    { as: 'line', d: 'M22 44l-2 6 2 5m8-11-2 6 2 5m8-11-2 6 2 5m8-11-2 6 2 5' },
  ],
  'hem.raw': [
    { as: 'cloth', d: 'M10 14h52v44H10z' },
    { as: 'line', d: 'M10 58h52' },
  ],
  'fit.close': [
    { as: 'skin', d: 'M36 14c16 0 20 14 20 24S50 60 36 60 16 48 16 38s4-24 20-24z' },
    { as: 'line', d: 'M36 11c18 0 23 16 23 27S52 63 36 63 13 49 13 38s5-27 23-27z' },
  ],
  'fit.easy': [
    { as: 'skin', d: 'M36 16c14 0 18 12 18 22s-6 20-18 20-18-10-18-20 4-22 18-22z' },
    { as: 'line', d: 'M36 10c19 0 24 16 24 28s-8 26-24 26-24-14-24-26 5-28 24-28z' },
  ],
  'fit.roomy': [
    { as: 'skin', d: 'M36 20c12 0 15 10 15 18s-5 17-15 17-15-9-15-17 3-18 15-18z' },
    { as: 'line', d: 'M36 8c21 0 27 18 27 30s-9 28-27 28S9 50 9 38 15 8 36 8z' },
  ],
};
