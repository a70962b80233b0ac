/** A card as a picture: its layout as data, drawn on the page (SVG) or into a PNG. Loaded by the screens that show cards. */
export { CardPicture } from './card-picture';
export type { CardDrawing } from './drawing';
export { drawCard, type Modules } from './layout';
export { DrawingError, pngOf } from './png';
