/**
 * Parts: what more than one screen is made of. They show values and tell what was pressed; no store, no drafting and
 * no address of a screen is known here.
 */
export { footBar, headBar, pictureBar } from './bar';
export { fieldText } from './field-text';
export { DiagramPicture, FigurePicture } from './figure';
export { printed, shownLength } from './fractions';
export { Gap } from './gap';
export { Icon, type IconName } from './icon';
export { unless } from './idle';
export { Keypad } from './keypad';
export { LengthField } from './length-field';
export { Header, Page, useHeading } from './page';
export { type Pick, Picks } from './picks';
export { ChoicePicture, ClothPicture, GarmentPicture, hasPictures } from './pictures/picture';
export { Portrait, TraitPicture } from './portrait';
export { type Speech, sayFirst, useWords, WordsContext } from './say';
export { Segments } from './segments';
export { spoken } from './spoken';
export { TableScene } from './table-scene';
export { TapeLine } from './tape-line';
export { TapedFigure } from './taped-figure';
export { UnitToggle } from './unit-toggle';
export { WayPage } from './way-page';
