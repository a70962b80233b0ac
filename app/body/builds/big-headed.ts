import { type Build, usualSway } from './build';

/** The head far bigger round than the trunk, stubby limbs. Imagined; no published body of this build is known. */
export const bigHeaded: Build = {
  id: 'big-headed',
  kind: 'upright',
  share: 0.1,
  girth: 220,
  proportions: {
    height: 1.35,
    'neck-girth': 0.78,
    'body-girth': 1.1,
    'front-width': 0.555,
    'back-width': 0.545,
    'across-shoulders': 0.34,
    'arm-length': 0.27,
    'underarm-length': 0.19,
    'body-length': 0.4,
    'back-body-length': 0.38,
    'side-length': 0.2,
    'inside-leg-length': 0.2,
    'waist-to-hem': 0.38,
    'scarf-length': 1.95,
  },
  groups: { head: 1.5, ear: 1.3 },
  sway: { ...usualSway, head: 0.9, arm: 1.5, stride: 1.3 },
};
