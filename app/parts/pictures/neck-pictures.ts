import { cloth, deep, line, measured, type Picture, stitch } from './strokes';

const base = cloth('M8 18q28 40 56 0v42H8z');
const inside = deep('M8 18q28 12 56 0-28 40-56 0z');

/** How a neck edge is finished, seen close. */
export const neckPictures: Readonly<Record<string, Picture>> = {
  'neck.auto': [inside, base, measured],
  'neck.bound': [inside, base, deep('M8 18q28 40 56 0v7q-28 40-56 0z')],
  'neck.faced': [inside, base, stitch('M8 29q28 39 56 0')],
  'neck.in-one': [cloth('M14 20q6 22 22 22t22-22h6v40H8V20z'), stitch('M20 20q4 16 16 16t16-16'), stitch('M8 52h56')],
  'neck.lined': [inside, base, line('M20 22v8m8-6v12m8-11v14m8-15v12m8-14v8')],
  'neck.band': [inside, base, cloth('M12 22q24 34 48 0l-5-11q-19 24-38 0z')],
  'neck.flat': [inside, base, cloth('M8 18q14 20 28 20l-2 12Q14 48 6 34zM64 18Q50 38 36 38l2 12q20-2 28-16z')],
};
