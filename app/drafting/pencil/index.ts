// The door of pencil: pieces as numbers for a ruler, for makers who draw by hand, and what is said of
// them; paper is output's.

export { type Join, type Mark, type NotchMark, type PencilLine, type PencilPiece, pencilPlan, stepOf } from './plan';
export { type PencilStep, pencilSteps } from './steps';
export { drawnWords, headWords, joinWords, lineName, lineWords, planTitle } from './words';
