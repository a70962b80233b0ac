import type { GarmentId } from '../../drafting/catalogue';
import { coatOnDog } from './coat-pictures';
import {
  cloth,
  deep,
  face,
  flared,
  hood,
  line,
  longSleeves,
  neckHole,
  type Picture,
  shortSleeves,
  stitch,
  trunk,
  waistband,
} from './strokes';

/** Each garment, seen from the front: a garment without a picture does not compile. */
export const garmentPictures: Readonly<Record<GarmentId, Picture>> = {
  'hooded-top': [longSleeves, trunk, hood, face, cloth('M28 42h16l3 12H25z')],
  jacket: [
    longSleeves,
    trunk,
    hood,
    face,
    line('M36 27v33'),
    cloth('M26 46h7v8h-7zM39 46h7v8h-7z'),
    line('M23 56h26M10 46l6 3M62 46l-6 3'),
  ],
  tee: [shortSleeves, trunk, neckHole],
  'simple-top': [
    cloth('M27 20q9 4 18 0l21 8-4 11-15-4q-3 2-3 6l1 19H27l1-19q0-4-3-6l-15 4-4-11z'),
    neckHole,
    stitch('M27 20 6 28M45 20l21 8'),
  ],
  tank: [cloth('M25 14h6q5 14 10 0h6q0 14 7 17l-2 29H20l-2-29q7-3 7-17z'), stitch('M27 15q0 14-7 18M45 15q0 14 7 18')],
  nightshirt: [
    cloth('M26 16C18 20 12 30 8 41l8 4c3-6 6-11 9-14zM46 16c8 4 14 14 18 25l-8 4c-3-6-6-11-9-14z'),
    cloth('M26 16c4 4 16 4 20 0l7 50H19z'),
    deep('M26 16c4-5 16-5 20 0-4 4-16 4-20 0z'),
    line('M36 20v10'),
  ],
  dress: [
    cloth('M26 14c-5 2-9 6-11 10l7 5 4-3zM46 14c5 2 9 6 11 10l-7 5-4-3z'),
    cloth('M26 14c4 4 16 4 20 0l1 20H25z'),
    cloth('M25 34 10 62q26 7 52 0L47 34z'),
    deep('M26 14c4-5 16-5 20 0-4 4-16 4-20 0z'),
    line('M29 35l-6 25m10-25-2 27m12-27 6 25m-10-25 2 27'),
  ],
  'tube-dress': [
    cloth('M27 16h18q0 12 8 14l7 30q-24 6-48 0l7-30q8-2 8-14z'),
    deep('M27 16q9-5 18 0-9 4-18 0z'),
    line('M30 18l-1 8m5-8v9m4-9v9m4-9 1 8M14 54q22 6 44 0'),
  ],
  skirt: [waistband, flared, line('M30 21l-7 36m10-36-3 38m16-38 7 36m-10-36 3 38')],
  trousers: [
    cloth('M20 16h32l6 46H41l-5-26-5 26H14z'),
    stitch('M20 21h32'),
    line('M23 16l-1 5m6-5v5m6-5v5m5-5v5m6-5v5m5-5 1 5M36 21v15'),
  ],
  dungarees: [
    line('M28 22C28 8 24 8 22 30M44 22C44 8 48 8 50 30'),
    cloth('M20 30h32l4 34H41l-5-20-5 20H16z'),
    cloth('M27 16h18v16H27z'),
    stitch('M20 34h32M29 18h14v12'),
  ],
  romper: [
    cloth('M27 10c-5 2-9 6-11 10l7 5 4-3zM45 10c5 2 9 6 11 10l-7 5-4-3z'),
    cloth('M27 10q9 5 18 0l2 24 7 24q-8 5-14 0l-4-12-4 12q-6 5-14 0l7-24z'),
    deep('M27 10q9-6 18 0-9 5-18 0z'),
    stitch('M25 34h22M19 55q6 3 12 0M41 55q6 3 12 0'),
  ],
  pants: [
    cloth('M14 20h44l2 12q-16 4-18 20H30q-2-16-18-20z'),
    stitch('M14 25h44M15 36q13 4 14 14M57 36q-13 4-14 14'),
    line('M20 20v5m6-5v5m6-5v5m8-5v5m6-5v5m6-5v5'),
  ],
  coat: [
    cloth('M22 10C8 8 6 22 16 26L12 58q2 8 12 8h24q10 0 12-8L56 26C66 22 64 8 50 10q2 14-14 14T22 10z'),
    stitch('M20 14C14 14 12 20 20 24L16 56q2 6 8 6h24q6 0 8-6L52 24C60 20 58 14 52 14'),
  ],
  'fitted-coat': coatOnDog,
  bonnet: [
    cloth('M20 54C4 34 14 8 38 8c18 0 26 16 24 34l-8 12z'),
    deep('M38 8c18 0 26 16 24 34l-8 12q2-34-16-46z'),
    line('M20 54l8 8M54 54l-12 10M26 20l5 3m-9 5 6 2m-7 8 6-1'),
  ],
  tunic: [
    cloth('M26 12C14 18 8 38 13 60q23 7 46 0C64 38 58 18 46 12z'),
    deep('M26 12q10-6 20 0-10 5-20 0z'),
    line('M31 14.5C23 26 22 46 25 63M41 14.5c8 11.5 9 31.5 6 48.5'),
  ],
  hat: [
    cloth('M12 48C12 8 60 8 60 48z'),
    line('M36 18v30M36 18C24 22 22 36 22 48M36 18c12 4 14 18 14 30'),
    deep('M10 46h52v12H10z'),
  ],
  cape: [
    cloth('M29 14q7 5 14 0C56 24 63 44 63 58q-27 9-54 0C9 44 16 24 29 14z'),
    deep('M29 14q7-6 14 0-7 5-14 0z'),
    line('M36 18v44'),
  ],
  apron: [
    line('M27 16C24 4 48 4 45 16M18 36 8 40m46-4 10 4'),
    cloth('M27 14h18l9 22v26q-18 4-36 0V36z'),
    cloth('M26 42h20v11H26z'),
    stitch('M27 45h18'),
  ],
  bib: [
    deep('M22 22a14 12 0 0 1 28 0l-4 4a10 8 0 0 0-20 0z'),
    cloth('M22 22c-8 6-10 20-6 30 4 12 36 12 40 0 4-10 2-24-6-30-2 14-26 14-28 0z'),
    stitch('M21 27c-5 6-6 16-3 23 4 8 32 8 36 0 3-7 2-17-3-23'),
  ],
  'bow-tie': [
    line('M6 30q30-8 60 0M6 37q30-8 60 0'),
    cloth('M34 36 12 24q-5 12 0 24zM38 36l22-12q5 12 0 24z'),
    deep('M31 30q5-3 10 0v12q-5 3-10 0z'),
    line('M18 32l12 4-12 4M54 32l-12 4 12 4'),
  ],
  scarf: [
    cloth('M14 20q22 14 44 0l3 11q-25 16-50 0z'),
    cloth('M40 32l13 26-10 5-13-28z'),
    cloth('M33 34l2 30H24l-1-31z'),
    line('M25 60v5m4-5v5m4-5v5m10-6 2 5m2-7 2 5m1-7 2 5'),
  ],
  'wrist-warmers': [
    cloth('M12 16q9 4 18 0l3 42q-10 5-20 0z'),
    cloth('M42 16q9 4 18 0l-1 42q-10 5-20 0z'),
    deep('M12 16q9-5 18 0-9 4-18 0zM42 16q9-5 18 0-9 4-18 0z'),
    stitch('M13 52q10 5 19 0M40 52q10 5 19 0'),
  ],
  socks: [
    cloth('M12 10h18v28q2 4 8 6 6 4 4 12-2 8-12 6L18 58Q10 56 11 46z'),
    cloth('M40 6h18v28q2 4 8 6 4 4 2 12-2 8-12 6L46 54q-4-1-5-4 0-4-2-8 1-4 1-8z'),
    stitch('M12 15h18M40 11h18'),
  ],
  vest: [
    cloth('M14 20q22-8 44 0l-2 42H40l-4-30-4 30H16z'),
    deep('M28 18l8 14-8 6-6-18zM44 18l-8 14 8 6 6-18z'),
    line('M17 28q7 8 1 18M55 28q-7 8-1 18'),
  ],
  'sleeping-bag': [
    cloth('M16 8h40v50q0 8-8 8H24q-8 0-8-8z'),
    deep('M16 30h40v28q0 8-8 8H24q-8 0-8-8z'),
    cloth('M22 12q14-4 28 0 2 6 0 12-14 4-28 0-2-6 0-12z'),
    stitch('M16 34h40'),
  ],
};
