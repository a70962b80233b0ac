/** What the parts of several garments need to be measured, what must pass on the way on and off too. */
import type { MeasureId } from '../../body';

export const bodiceNeeds = [
  'neck-girth',
  'chest-girth',
  'body-girth',
  'front-width',
  'back-width',
  'hem-girth',
  'shoulder-length',
  'side-inset',
  'armhole-depth',
  'body-length',
  'back-body-length',
  'side-length',
  'front-neck-drop',
  'back-neck-drop',
  'head-girth',
] as const satisfies readonly MeasureId[];

export const sleeveNeeds = [
  'arm-root-girth',
  'upper-arm-girth',
  'paw-girth',
  'arm-length',
  'underarm-length',
] as const satisfies readonly MeasureId[];

/** Without sleeves, what an armhole lets through and goes round. */
export const bareNeeds = ['arm-root-girth', 'paw-girth'] as const satisfies readonly MeasureId[];

export const hoodNeeds = ['head-girth', 'face-edge', 'crown-arc', 'hood-depth'] as const satisfies readonly MeasureId[];
export const earNeeds = [
  'ear-base',
  'ear-girth',
  'ear-inset',
  'ear-from-face-edge',
] as const satisfies readonly MeasureId[];
export const skirtNeeds = ['waist-girth', 'hip-girth', 'waist-to-hem'] as const satisfies readonly MeasureId[];
