/** A card as a picture: its layout as data, and the PNG drawn from it. Loaded by the screen that sends cards. */
export type { CardDrawing } from './drawing';
export { cardWords, drawCard, type Modules } from './layout';
export { forPrinter, pngOf } from './png';
