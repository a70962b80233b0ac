import { cloth, deep, line, type Picture, skin, stitch } from './strokes';

/** A body on four legs from the side, head to the left. */
const dog = skin('M10 22q-6-10 2-12l14-2 4 16-6 8zM20 38h8v24h-8zM50 38h8v24h-8zM58 26q10-2 8-12l-3 1q0 6-7 7z');
const holed = cloth('M22 16Q18 24 18 36l2 8h1q0-10 4-10t4 10h13V22Q38 20 30 14z');
const long = [dog, cloth('M22 16Q18 24 18 36l2 8h32V22Q38 20 30 14z')];

/** What is asked of a coat for four legs. */
export const coatPictures: Readonly<Record<string, Picture>> = {
  'closes.belly': [...long, deep('M20 44h32v-5q-16-4-33 0z'), line('M26 38v8m6-8v8m6-8v8m6-8v8')],
  'closes.back': [...long, deep('M31 15q8 6 21 7v6Q38 26 27 18z'), line('M34 14l-2 8m8-5-2 8m8-6-1 8')],
  'coatNeck.bound': [...long, stitch('M20 20q6 4 11-3'), line('M22 16q4 3 8-2')],
  'coatNeck.collar': [...long, deep('M19 15l9-6 5 7-11 7z')],
  'coatLegs.bound': [dog, holed, stitch('M19 43q1-11 6-11t6 11')],
  'coatLegs.sleeves': [
    dog,
    cloth('M22 16Q18 24 18 36l2 20h8l1-12h23V22Q38 20 30 14z'),
    stitch('M20 52h8'),
    line('M20 36q4-4 9 8'),
  ],
};
