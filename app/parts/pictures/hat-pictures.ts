import { cloth, deep, line, measured, type Picture, skin, stitch } from './strokes';

const crown = cloth('M12 48C12 8 60 8 60 48z');
const gores = line('M36 18v30M36 18C24 22 22 36 22 48M36 18c12 4 14 18 14 30');
const ears = skin('M18 30C4 18 4 6 10 4c8 2 12 12 14 20zM54 30C68 18 68 6 62 4c-8 2-12 12-14 20z');

/** A hat by its brim, and where the ears are. */
export const hatPictures: Readonly<Record<string, Picture>> = {
  'brim.cuff': [crown, gores, deep('M10 46h52v12H10z')],
  'brim.turned': [crown, gores, stitch('M12 44q24 4 48 0')],
  'brim.brim': [cloth('M18 44C18 8 54 8 54 44z'), deep('M6 50q30-16 60 0-30 14-60 0z'), line('M36 14v28')],
  'hatEars.auto': [crown, measured],
  'hatEars.open': [crown, gores, ears],
  'hatEars.down': [crown, gores, ears, deep('M17 28l4 20h-8zM55 28l-4 20h8z')],
  'hatEars.covered': [crown, gores],
};
