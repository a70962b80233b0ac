// The door of output: a draft on paper as PDF, for cutting machines as SVG, for other programs as JSON. All are fed by
// the same draft; words come from `say`. Nothing is computed anew here, and no file is written.

export type { LaidOnCloth } from './cloth-ink';
export { toClothPdf } from './cloth-pdf';
export type { DrawnFigure } from './figure-ink';
export { type GuidePdfOptions, toGuidePdf } from './guide-pdf';
export { type Ink, type Pen, pensOf, type Words } from './ink';
export { type DraftFile, type PieceRecord, toJson } from './json';
export { largeInk } from './large-pages';
export { lettersWithout } from './letters';
export { type NumbersSheet, toNumbersPdf } from './numbers-pdf';
export { pagesInk } from './page-ink';
export { type PatternOptions, type PdfOptions, type Sheets, toPdf } from './pdf';
export type { Glyphs, PdfScript, Picture } from './pdf-brush';
export { toPencilPdf } from './pencil-pdf';
export type { ReadOptions } from './read-page';
export { type CardWords, type ShortTwin, toShortTwin } from './short-twin';
export { toSvg } from './svg';
export { toTapePdf } from './tape-pdf';
export { toTestPdf } from './test-pdf';
export { type TwinOptions, toTwin } from './twin';
export type { WornPicture } from './worn-ink';
