import { LEAST_SIDE_MM } from './bodice';
import { maker } from './maker';
import { HEM_RIB_MM } from './scale';

/** A bodice as much shorter as a band of rib at its hem is deep, where its side leaves so much. */
export const ribbedSizes = maker(
  ['armholeDepth', 'sideLevel', 'frontLength', 'backLength'],
  ['sideLevel', 'frontLength', 'backLength'],
  (wearer, { armholeDepth, sideLevel, frontLength, backLength }) => {
    const room = sideLevel - armholeDepth - wearer.hem - LEAST_SIDE_MM;
    const by = Math.max(Math.min(HEM_RIB_MM[wearer.scale], room), 0);
    return { sizes: { sideLevel: sideLevel - by, frontLength: frontLength - by, backLength: backLength - by } };
  },
);
