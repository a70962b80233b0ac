// The door of told: what a piece and a page show, in words, for eyes that do not see the drawing. Page to read and screen say the same.

export { allowancesOf } from './allowances';
export { changesTold, notesTold } from './changes';
export { pageTold } from './page-told';
export { type PieceTold, pieceTold } from './piece-told';
