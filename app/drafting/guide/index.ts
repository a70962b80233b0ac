// The door of the guide: a draft in, the sewing of just this garment out, step by step, as data. What is joined, in which
// order, and how each piece looks follows from the draft alone; no garment is known here by name, and nothing is drafted.

export { guideOf } from './guide';
export type { Guide, GuideStep, Kind, Part, Scene } from './guide-types';
export { placeNames } from './names';
export { CHECK_STRIPS_MM, seamFrom } from './seam-check';
export { type Term, termsAt, termsIn, termsOnPaper } from './terms';
export { sewsNothing, timeOf, type Way, ways } from './time';
export { cutWords, kindWords, noteWords, settingWords, type Telling, termWords, titleOf } from './words';
