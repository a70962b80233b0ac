/**
 * Measuring: what to measure next, what readings amount to, what follows from them. Pure: no screen, no store, no
 * sentence ever lives here, and no drawing of clothes. (The drawn figures live in `figure`, the toys to try in `demo`.)
 */
export { bodyFrom } from './body-from';
export { demoCards } from './demo';
export * from './figure';
export { type Plan, type Progress, plan, type Step } from './plan';
export { type Settled, settle } from './settle';
