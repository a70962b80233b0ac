import { type Build, usualSway } from './build';

/**
 * A baby doll: a firm head, a round trunk without much of a waist, bent limbs. Girths near the averages of a seller of
 * doll clothes (dollclothessuperstore.com, "Guidelines on various size baby dolls"), lengths near real infants
 * (clothingforbaby.com, newborn clothing sizes); what they do not tell is imagined.
 */
export const babyDoll: Build = {
  id: 'baby-doll',
  kind: 'upright',
  share: 0.2,
  girth: 340,
  head: 'firm',
  ears: 'none',
  proportions: {
    height: 1.2,
    'neck-girth': 0.57,
    'body-girth': 1.04,
    'front-width': 0.53,
    'back-width': 0.51,
    'hem-girth': 1.03,
    'waist-girth': 0.96,
    'hip-girth': 1.01,
    'over-arms-girth': 1.45,
    'shoulder-length': 0.08,
    'across-shoulders': 0.36,
    'side-inset': 0.05,
    'armhole-depth': 0.17,
    'arm-root-girth': 0.46,
    'upper-arm-girth': 0.42,
    'paw-girth': 0.36,
    'arm-length': 0.42,
    'underarm-length': 0.29,
    'body-length': 0.58,
    'back-body-length': 0.56,
    'side-length': 0.36,
    'body-rise': 0.33,
    'crotch-length': 0.91,
    'front-crotch': 0.45,
    'underarm-to-waist': 0.2,
    'thigh-girth': 0.58,
    'foot-girth': 0.52,
    'bodice-height': 0.23,
    'strap-length': 0.3,
    'waist-to-hem': 0.72,
    'inside-leg-length': 0.44,
    'body-loop': 1.5,
    'cape-length': 0.5,
    'bib-length': 0.28,
    'scarf-length': 1.42,
  },
  groups: { head: 0.87, length: 1.35 },
  sway: usualSway,
};
