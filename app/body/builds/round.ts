import type { Build } from './build';

/** About as high as wide. Imagined. */
export const ball: Build = {
  id: 'ball',
  kind: 'round',
  share: 0.6,
  girth: 560,
  proportions: { height: 0.34 },
  groups: {},
  sway: { trunk: 0.8, head: 0.8 },
};

/** Taller than wide: eggs and birds. Imagined. */
export const egg: Build = {
  id: 'egg',
  kind: 'round',
  share: 0.4,
  girth: 520,
  proportions: { height: 0.43 },
  groups: { length: 1.1 },
  sway: { trunk: 0.8, head: 0.8 },
};
