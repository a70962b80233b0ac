import { type Build, usualSway } from './build';

/**
 * A wide trunk, short thick limbs, a head about as big round as the chest. Checked against one published bear (chest 39,
 * neck 24, head 35, length 21, arm 24, leg 20 cm: happybirth.hatenadiary.com, 2012-08-12) and two published garments
 * for bears (jumper length 6 on a chest of 13 1/2 in, jacket back 7 on 17: linmaryknits.com, 2017-10). All else imagined.
 */
export const plushBear: Build = {
  id: 'plush-bear',
  kind: 'upright',
  share: 0.35,
  girth: 370,
  proportions: {
    height: 1.15,
    'neck-girth': 0.65,
    'body-girth': 1.09,
    'front-width': 0.553,
    'back-width': 0.537,
    'hem-girth': 1.05,
    'waist-girth': 1.02,
    'hip-girth': 1.1,
    'across-shoulders': 0.33,
    'armhole-depth': 0.18,
    'arm-length': 0.5,
    'underarm-length': 0.35,
    'body-length': 0.47,
    'back-body-length': 0.45,
    'side-length': 0.245,
    'body-rise': 0.265,
    'crotch-length': 0.81,
    'underarm-to-waist': 0.14,
    'inside-leg-length': 0.28,
    'waist-to-hem': 0.43,
    'scarf-length': 1.6,
  },
  groups: { head: 0.95 },
  sway: { ...usualSway, length: 1.2, arm: 1.1, stride: 1.4 },
};
