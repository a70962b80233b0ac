import { cloth, deep, line, measured, type Picture, skin, stitch } from './strokes';

const long = cloth('M20 14h32l5 46H41l-5-24-5 24H15z');
const casing = [stitch('M20 19h32'), line('M24 14v5m6-5v5m6-5v5m6-5v5m6-5v5')];
const tube = cloth('M20 14h32l-4 46H24z');
const seat = cloth('M12 14h48l4 34q-14 2-20 12H28q-6-10-20-12z');
const tailed = cloth('M20 14h32l5 46H41l-5-20-5 20H15z');

/** Trousers by their legs, and what lies between and behind them. */
export const trouserPictures: Readonly<Record<string, Picture>> = {
  'trousers.long': [long, ...casing],
  'trousers.short': [cloth('M18 18h36l5 26H40l-4-8-4 8H13z'), stitch('M18 23h36M14 40h18m8 0h18')],
  'trousers.elastic': [
    cloth('M18 18h36q8 14 4 24l-2 5H41l-5-9-5 9H16l-2-5q-4-10 4-24z'),
    stitch('M18 23h36'),
    line('M17 42l-1 5m5-5v5m5-5v5m5-5-1 5M41 42l1 5m4-5v5m5-5v5m4-5 1 5'),
  ],
  'trousers.pyjamas': [
    cloth('M18 14h36l8 48H40l-4-24-4 24H10z'),
    ...casing,
    line('M22 26l-4 32m9-32-3 34M50 26l4 32m-9-32 3 34'),
  ],
  'pants.pants': [
    cloth('M14 20h44l2 12q-16 4-18 20H30q-2-16-18-20z'),
    stitch('M14 25h44M15 36q13 4 14 14M57 36q-13 4-14 14'),
  ],
  'pants.nappy': [
    cloth('M20 22h32l2 10q-12 4-12 22H30q0-18-12-22z'),
    deep('M10 18h20v12H10zM42 18h20v12H42z'),
    stitch('M27 19v10M45 19v10'),
  ],
  'legs.auto': [long, measured],
  'legs.two': [long, stitch('M36 14v22')],
  'legs.tube': [tube, stitch('M36 14v46')],
  'waist.auto': [cloth('M12 20q24-8 48 0v38H12z'), measured],
  'waist.turned': [cloth('M12 20h48v38H12z'), deep('M12 20h48v12H12z'), stitch('M12 31h48')],
  'waist.faced': [
    cloth('M12 26q24 0 48-12v44H12z'),
    deep('M12 26q24 0 48-12v12q-24 12-48 12z'),
    stitch('M12 37q24 0 48-12'),
  ],
  'waist.bodice': [cloth('M20 8h32v24H20z'), cloth('M12 32h48v28H12z'), stitch('M14 32h44')],
  'gusset.auto': [seat, measured],
  'gusset.diamond': [seat, deep('M36 40l10 10-10 10-10-10z'), stitch('M36 14v26')],
  'gusset.none': [seat, stitch('M36 14v46')],
  'tail.auto': [tailed, measured],
  'tail.open': [
    tailed,
    skin('M33 26q-12-2-15-18 6-8 11-2 1 11 9 18z'),
    deep('M36 22q4 5 0 10-4-5 0-10z'),
    stitch('M36 14v8m0 10v8'),
  ],
  'tail.waist': [
    tailed,
    deep('M36 14q4 12 0 22-4-10 0-22z'),
    skin('M34 31q-13 3-15-11 8-10 16-3 4 5-1 14z'),
    stitch('M31 14l4 15M41 14l-4 15'),
  ],
  'tail.covered': [tailed, stitch('M36 14v26')],
};
