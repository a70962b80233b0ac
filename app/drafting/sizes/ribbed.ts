import { LEAST_SIDE_MM } from './bodice';
import { maker } from './maker';
import { HEM_RIB_MM } from './scale';

/** The tummy is fullest at most this share down a side: below it, the side has to end. */
const LOWEST_FULLEST = 0.9;

/** A bodice as much shorter as a band of rib at its hem is deep, where its side leaves so much; the tummy stays where it is. */
export const ribbedSizes = maker(
  ['armholeDepth', 'sideLevel', 'frontLength', 'backLength', 'fullest'],
  ['sideLevel', 'frontLength', 'backLength', 'fullest'],
  (wearer, { armholeDepth, sideLevel, frontLength, backLength, fullest }) => {
    const room = sideLevel - armholeDepth - wearer.hem - LEAST_SIDE_MM;
    const by = Math.max(Math.min(HEM_RIB_MM[wearer.scale], room), 0);
    const lower = (fullest * (sideLevel - armholeDepth)) / (sideLevel - armholeDepth - by);
    return {
      sizes: {
        sideLevel: sideLevel - by,
        frontLength: frontLength - by,
        backLength: backLength - by,
        fullest: Math.min(lower, Math.max(fullest, LOWEST_FULLEST)),
      },
    };
  },
);
