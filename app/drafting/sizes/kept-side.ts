import { LEAST_SIDE_MM } from './bodice';
import { maker } from './maker';

/** Changes under half a millimetre are no news. */
const NEWS_MM = 0.5;

/**
 * Where an armhole was let out after trying on, a side is left below it all the same: front and back become longer. No body as
 * measured needs it, for its lengths were made with this side.
 */
export const keptSideSizes = maker(
  ['armholeDepth', 'sideLevel', 'frontLength', 'backLength'],
  ['sideLevel', 'frontLength', 'backLength'],
  ({ hem }, { armholeDepth, sideLevel, frontLength, backLength }) => {
    const by = Math.max(armholeDepth + hem + LEAST_SIDE_MM - sideLevel, 0);
    return {
      sizes: { sideLevel: sideLevel + by, frontLength: frontLength + by, backLength: backLength + by },
      adjustments:
        by > NEWS_MM ? [{ code: 'side-kept', by, because: 'side-left', check: ['armhole-depth', 'body-length'] }] : [],
    };
  },
);
