import { cloth, deep, line, type Picture, skin, stitch } from './strokes';

/** A body on four legs from the side, head to the left. */
const dog = skin('M8 22q-4-10 4-12l14-2 5 10 25 3q4-3 4-11 5-1 6 4 0 8-6 12 3 6 1 14v22h-9V44H29v18h-9V42q-4-8-2-15z');
const coat = cloth('M22 17Q17 26 18 36l2 9h31V23L31 18q-5 2-9-1z');
/** A front leg that comes out of its hole, over the coat. */
const leg = skin('M20 38q4.5-7 9 0v24h-9z');
const long = [dog, coat, leg];

/** The coat on its toy, for the tile. */
export const coatOnDog: Picture = [...long, deep('M22 17q5 4 9 1l2-3q-6 2-10-2z'), stitch('M18 38q6-13 13 0M49 25v18')];

/** What is asked of a coat for four legs. */
export const coatPictures: Readonly<Record<string, Picture>> = {
  'closes.belly': [dog, coat, deep('M20 45h31v-6H19z'), leg, line('M34 38v8m5-8v8m5-8v8')],
  'closes.back': [...long, deep('M31 18l20 5v6l-20-5z'), line('M35 17v9m5-8v9m5-8v9')],
  'coatNeck.bound': [...long, stitch('M20 22q6 4 12 1')],
  'coatNeck.collar': [...long, deep('M20 18l2-7q6 3 11 0l1 8q-7 4-14-1z')],
  'coatNeck.hood': [
    ...long,
    cloth('M20 20Q8 14 16 6q10-5 16 2l2 12q-8 5-14 0z'),
    deep('M10 12q4-4 8-2 0 6-2 9-5-1-6-7z'),
  ],
  'coatLegs.turned': [...long, stitch('M19 40q5-13 11 0'), stitch('M17 40q7-19 15 0')],
  'coatLegs.bound': [...long, stitch('M18 40q6-16 13 0')],
  'coatLegs.sleeves': [dog, coat, leg, cloth('M19 37q5-8 11 0v15H19z'), stitch('M20 49h9')],
};
