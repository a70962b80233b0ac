import { jsPDF } from 'jspdf';
import type { Say, Unit } from '../../body';
import type { Draft } from '../draft-types';
import type { Layout } from '../sheets/layout';
import type { Print } from '../sheets/prints';
import { fingerprint } from './fingerprint';
import type { Ink } from './ink';
import { madeFor } from './label';
import { largeInk } from './large-pages';
import { listInk } from './list-ink';
import { pagesInk } from './page-ink';
import { type PdfBrush, type PdfScript, pdfBrush, westernPdf, writeInto } from './pdf-brush';
import { paperForWords } from './word-pages';
import type { WornPicture } from './worn-ink';

export type PdfOptions = {
  readonly say: Say;
  readonly units: Unit;
  /** How the language is written; without it letters the standard fonts lack become empty boxes. See `lettersWithout`. */
  readonly script?: PdfScript;
  /** How large words and lines are, where no layout says so. */
  readonly print?: Print | undefined;
};

/** A draft as it lies on paper, and the toy in it for the first page. */
export type Sheets = { readonly draft: Draft; readonly layout: Layout; readonly worn?: WornPicture | undefined };

/** `only`: some pages, by their place, of a single draft's; `copies` of each; `list`: with pages of words and a label for each bag. */
export type PatternOptions = PdfOptions & {
  readonly only?: readonly number[];
  readonly copies?: number;
  readonly list?: boolean;
};

type Size = { readonly width: number; readonly height: number };

/** A page as it is drawn. */
type Inked = { readonly size: Size; readonly ink: readonly Ink[] };

/**
 * Laid out drafts as one PDF at true scale: one user-space unit is 1/72 in (ISO 32000-1, 8.3.2.3), every page the size of
 * its paper, viewers asked not to scale. The same drafts and layouts give the same bytes.
 */
export function toPdf(sheets: readonly Sheets[], options: PatternOptions): Uint8Array {
  const { say, units, script, only, copies = 1, list = false } = options;
  const [first] = sheets;
  if (!first) throw new RangeError('nothing to print');
  const { correction, print } = first.layout;
  const about = { id: JSON.stringify([sheets.map(madeFrom), only, copies, list]), title: titleOf(sheets, say), script };
  const wished = (layout: Layout) => layout.pages.filter((_, index) => !only || only.includes(index));
  const sizeOf = ({ width, height }: Size) => [width * correction, height * correction];
  const words = paperForWords(first.layout.paper.id, units);
  const small = { width: words.width / correction, height: words.height / correction };
  const large = print === 'large' && !only;
  const pdf = blankPdf(sizeOf(large ? small : (wished(first.layout)[0] ?? first.layout.paper)), first.draft, about);
  pdf.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true });
  const brush = pdfBrush(pdf, correction, script, print);
  const lettering = { say, units, widthOf: brush.widthOf };
  const once = sheets.flatMap(({ draft, layout, worn }): readonly Inked[] => {
    const wording = { ...lettering, worn };
    const inkOn = pagesInk(draft, layout, wording);
    return [
      ...(large ? largeInk(draft, layout, small, wording).map((ink) => ({ size: small, ink })) : []),
      ...wished(layout).map((page) => ({ size: page, ink: inkOn(page) })),
    ];
  });
  const lists = (list ? listInk(sheets, small, lettering) : []).map((ink) => ({ size: small, ink }));
  for (const [at, { size, ink }] of [...Array.from({ length: copies }, () => once).flat(), ...lists].entries()) {
    const own = sizeOf(size);
    if (at > 0) pdf.addPage(own, orientation(own));
    for (const each of ink) brush.draw(each);
  }
  return new Uint8Array(pdf.output('arraybuffer'));
}

/** What tells one toy's sheets from another's: seams are as long as no other body's. */
const madeFrom = ({ draft, layout, worn }: Sheets) => [
  ...[draft.toy, draft.order, draft.engine, draft.seams.map(({ firstLength }) => firstLength)],
  ...[draft.pieces.map(({ seamLine }) => seamLine[0]), layout, worn !== undefined],
];

function titleOf(sheets: readonly Sheets[], say: Say): string {
  const toys = say('list.row', { of: sheets.map(({ draft }) => draft.toy) });
  return sheets[0] ? madeFor({ ...sheets[0].draft, toy: toys }, say) : '';
}

/** A file with one empty page, named and dated by its draft; `id` is all that it is made from. */
export function blankPdf(
  size: readonly number[],
  { order, engine }: Pick<Draft, 'engine'> & { readonly order: Pick<Draft['order'], 'date'> },
  {
    id,
    title,
    script = westernPdf,
  }: { readonly id: string; readonly title: string; readonly script?: PdfScript | undefined },
): jsPDF {
  const pdf = new jsPDF({
    unit: 'mm',
    format: [...size],
    orientation: orientation(size),
    precision: 4,
    compress: true,
    putOnlyUsedFonts: true,
  });
  pdf.setFileId(fingerprint(id + script.language));
  pdf.setCreationDate(creationDate(order.date));
  pdf.setProperties({ title, creator: `Hemling ${engine}` });
  pdf.viewerPreferences({ DisplayDocTitle: true, ...(script.direction === 'rtl' && { Direction: 'R2L' }) });
  pdf.internal.events.subscribe('putCatalog', () => writeInto(pdf, `/Lang (${script.language})`));
  return pdf;
}

/** Draws page after page, all of the file's first size, and gives the file as bytes. */
export function drawnPages(
  pdf: jsPDF,
  { draw }: Pick<PdfBrush, 'draw'>,
  pages: readonly (readonly Ink[])[],
  { width, height }: Size,
): Uint8Array {
  for (const [at, inks] of pages.entries()) {
    if (at > 0) pdf.addPage([width, height], orientation([width, height]));
    for (const ink of inks) draw(ink);
  }
  return new Uint8Array(pdf.output('arraybuffer'));
}

/** The library turns a page whose sides do not agree with its orientation. */
function orientation([width = 0, height = 0]: readonly number[]): 'portrait' | 'landscape' {
  return width > height ? 'landscape' : 'portrait';
}

/** A PDF date (ISO 32000-1, 7.9.4) as text: a `Date` would depend on the time zone. */
function creationDate(date: string): string {
  const day = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  return `D:${day ? day.slice(1).join('') : '20000101'}000000+00'00'`;
}
