/**
 * What the parts of several garments need to be measured, what must pass on the way on and off too; and, quietly, what
 * others tell well enough (see `Need`).
 */
import type { MeasureId } from '../../body';
import { needs, quietly } from './head';

/** A top as far as the waist: neck, shoulder, armhole, and the head it goes over. */
export const yokeNeeds = [
  'neck-girth',
  'chest-girth',
  'shoulder-length',
  'armhole-depth',
  'front-neck-drop',
  'head-girth',
] as const satisfies readonly MeasureId[];
export const yokeQuiet = ['side-inset', 'back-neck-drop'] as const satisfies readonly MeasureId[];

/** From there over the tummy to a hem at the hips. */
export const belowNeeds = [
  'body-girth',
  'front-width',
  'back-width',
  'hem-girth',
  'body-length',
] as const satisfies readonly MeasureId[];
export const belowQuiet = ['back-body-length', 'side-length'] as const satisfies readonly MeasureId[];

/** A top to the hips. */
export const topNeeds = [...needs([...yokeNeeds, ...belowNeeds]), ...quietly([...yokeQuiet, ...belowQuiet])];

export const sleeveNeeds = [
  'upper-arm-girth',
  'paw-girth',
  'arm-length',
  'underarm-length',
] as const satisfies readonly MeasureId[];
/** Hard to take where arms are sewn flat on or set at the sides; the upper arm tells it. */
export const sleeveQuiet = ['arm-root-girth'] as const satisfies readonly MeasureId[];

/** Without sleeves, what an armhole lets through; and, quietly, what it goes round. */
export const bareNeeds = ['paw-girth'] as const satisfies readonly MeasureId[];
export const bareQuiet = ['arm-root-girth'] as const satisfies readonly MeasureId[];

export const hoodNeeds = ['head-girth', 'face-edge', 'crown-arc', 'hood-depth'] as const satisfies readonly MeasureId[];
export const earNeeds = [
  'ear-base',
  'ear-girth',
  'ear-inset',
  'ear-from-face-edge',
] as const satisfies readonly MeasureId[];
export const skirtNeeds = ['waist-girth', 'hip-girth', 'waist-to-hem'] as const satisfies readonly MeasureId[];
