/**
 * Measuring: what to measure next, what readings amount to, what follows from them. Pure: no screen, no store, no
 * sentence ever lives here, and no drawing of clothes. (Doors of their own: `figure`, the drawn toys, and `photo`, lengths and outlines guessed from a photograph.)
 */
export { type Asking, asking, isWish, type Way } from './asking';
export { bodyFrom } from './body-from';
export { demoCards } from './demo';
export * from './figure';
export { marksFor } from './marks-for';
export { type Plan, type Progress, plan, type Step } from './plan';
export { type Settled, settle } from './settle';
