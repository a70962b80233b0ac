import { cloth, type Picture, skin, stitch } from './strokes';

/** A leg with its foot to the right. */
const leg = skin('M26 4h18v38q4 6 12 8 6 4 4 10-1 4-6 4H32q-8 0-8-10z');

const shaped = [cloth('M26 6h18v32q4 6 14 8 6 4 4 10-1 4-6 4H34q-8 0-8-8z'), stitch('M26 11h18')];

/** How far up the leg a sock reaches, and how its foot is cut. */
export const sockPictures: Readonly<Record<string, Picture>> = {
  'sock.low': [leg, cloth('M24 38h21q3 10 12 12 6 4 4 10-1 6-6 6H32q-9 0-9-10z'), stitch('M25 43h20')],
  'sock.high': [leg, cloth('M24 16h22v26q3 6 11 8 6 4 4 10-1 6-6 6H32q-9 0-9-10z'), stitch('M25 21h20')],
  'heel.shaped': shaped,
  'heel.tube': [cloth('M26 6h20v38q-2 16-10 16t-10-16z'), stitch('M26 11h20')],
};
