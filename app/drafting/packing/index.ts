// The door of packing: outlines as rows a millimetre tall, boards they are laid on, and the places still free; and the
// engine that lays shapes close, on strips and on fields. It knows shapes and boards only: nothing of paper, cloth,
// pieces or words, and never will.

export {
  type Board,
  type Box,
  block,
  blockBox,
  blockBoxes,
  blockLine,
  blockLines,
  blockOutside,
  blockRows,
  emptyBoard,
} from './board';
export { chance } from './chance';
export { type Fitted, packFields } from './fields';
export { highestPlace, ROUNDING_MM, type Stamp, stampOf } from './highest';
export type { Field, Found, Job, Packed, Place, Strip } from './job';
export { type Ring, ringArea } from './polygon';
export { nearestRoom } from './room';
export { type Rows, rowsOf } from './rows';
export { type Shape, shapeOf } from './shape';
export { type Stock, stockOf } from './stock';
export { packStrip } from './strip';
export { together } from './together';
