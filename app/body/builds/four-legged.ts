import { type Build, usualSway } from './build';

/**
 * A dog that stands. Neck and back near five breeds (shih-tzu.cc, middles of clothing-size ranges) and one worked
 * example (millamilla.net/pages/size); all else imagined.
 */
export const dog: Build = {
  id: 'dog',
  kind: 'four-legged',
  share: 0.55,
  girth: 400,
  proportions: { height: 0.85, 'neck-girth': 0.73, 'back-length': 0.74, 'under-length': 0.26, 'belly-girth': 0.95 },
  groups: { length: 1.12 },
  sway: { ...usualSway, trunk: 0.8 },
};

/** A thick barrel on stout legs, a thin neck: horses, dinosaurs, toys that lie. Imagined. */
export const barrel: Build = {
  id: 'barrel',
  kind: 'four-legged',
  share: 0.45,
  girth: 400,
  proportions: { height: 0.7, 'neck-girth': 0.6, 'back-length': 0.62, 'belly-girth': 1.02 },
  groups: { head: 0.9 },
  sway: { ...usualSway, head: 0.9, trunk: 0.8 },
};
