import { maker } from './maker';
import { WRIST_RIB_MM } from './scale';

/** A hood keeps at least this share of its depth behind a band of rib. */
const LEAST_DEPTH = 0.7;

/** A hood as much shallower as a band of rib at its face edge is deep; under the chin the band's ends lie in what is left free. */
export const ribbedHoodSizes = maker(
  ['hoodDepth', 'chinGap'],
  ['hoodDepth', 'chinGap'],
  (wearer, { hoodDepth, chinGap }) => {
    const by = Math.min(WRIST_RIB_MM[wearer.scale], hoodDepth * (1 - LEAST_DEPTH));
    return { sizes: { hoodDepth: hoodDepth - by, chinGap: chinGap + by } };
  },
);
