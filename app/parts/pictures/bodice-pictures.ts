import { cloth, line, type Picture, skin, stitch } from './strokes';

const band = cloth('M20 36h32v22H20z');
const body = skin('M36 5a10 10 0 0 1 7 17c8 2 11 8 11 18H18c0-10 3-16 11-18a10 10 0 0 1 7-17z');

/** Bodices by their upper edge, and the straps that hold them. */
export const bodicePictures: Readonly<Record<string, Picture>> = {
  'bodice.shoulder': [cloth('M25 14l6-2q5 9 10 0l6 2q0 12 6 16v28H19V30q6-4 6-16z')],
  'bodice.tank': [cloth('M27 10h5q4 16 8 0h5q0 18 8 22v26H19V32q8-4 8-22z')],
  'bodice.band': [body, cloth('M18 34h36v24H18z')],
  'bodice.dipped': [body, cloth('M18 30q9 0 18 10 9-10 18-10v28H18z'), line('M36 41l-3 9m3-9 3 9m-3-9v11')],
  'bodice.half-circle': [body, cloth('M18 58V46a18 17 0 0 1 36 0v12z')],
  'bodice.halter': [cloth('M30 10h12l11 24v24H19V34z'), line('M30 10q6 6 12 0')],
  'straps.straight': [band, cloth('M25 36V12h5v24zM42 36V12h5v24z')],
  'straps.crossed': [band, cloth('M24 36 42 12h6L30 36zM48 36 30 12h-6l18 24z')],
  'straps.neck': [band, cloth('M24 36l9-20 4 2-7 18zM48 36l-9-20-4 2 7 18z'), stitch('M33 16q3-6 6 0')],
  'straps.none': [body, band],
};
