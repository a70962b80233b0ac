import { cloth, deep, line, type Picture, skin, stitch } from './strokes';

const tunic: Picture = [
  cloth('M28 14C18 20 13 38 17 58q19 6 38 0C59 38 54 20 44 14z'),
  deep('M28 14q8-5 16 0-8 4-16 0z'),
  line('M32 15.5C26 27 25 45 28 60.5M40 15.5c6 11.5 7 29.5 4 45'),
];
const slits = stitch('M18 29q-3 8-3 16M54 29q3 8 3 16');

/** How a tunic meets its neck, and what comes out at its sides. */
export const tunicPictures: Readonly<Record<string, Picture>> = {
  'tunicNeck.gored': tunic,
  'tunicNeck.drawn': [
    cloth('M28 14C18 20 15 30 15 40v19q21 6 42 0V40C57 30 54 20 44 14z'),
    deep('M28 14q8-5 16 0-8 4-16 0z'),
    line('M30 15l-5 9m8-7.5-3 10m6-9v10m3-11 3 10m-1-12 5 9'),
  ],
  'wings.none': tunic,
  'wings.flat': [...tunic, skin('M18 28C8 30 2 42 4 54c8-2 12-8 11-13zM54 28c10 2 16 14 14 26-8-2-12-8-11-13z'), slits],
  'wings.round': [...tunic, skin('M17 30c-8-3-14 2-14 8s6 10 12 8zM55 30c8-3 14 2 14 8s-6 10-12 8z'), slits],
};
