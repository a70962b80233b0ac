// The door of cloth: the pieces of drafts as they are cut out, and how they lie on cloth sold by its width or on a scrap.
// Data only: nothing is drawn here, no word is written, and no clock is read.

export { type Cut, cutsOf } from './cuts';
export { type Answer, type LaidCut, layOnCloth, type Stuff } from './lay';
export { isStrip, type Layer } from './layers';
