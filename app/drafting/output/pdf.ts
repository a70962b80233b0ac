import { jsPDF } from 'jspdf';
import type { Say, Unit } from '../../body';
import type { Draft } from '../draft-types';
import type { Layout } from '../sheets/layout';
import { fingerprint } from './fingerprint';
import { madeFor } from './label';
import { pageInk } from './page-ink';
import { type Glyphs, pdfBrush } from './pdf-brush';
import type { WornPicture } from './worn-ink';

export type PdfOptions = {
  readonly say: Say;
  readonly units: Unit;
  /** Draws letters the standard fonts lack; without it they become empty boxes. See `lettersWithout`. */
  readonly glyphs?: Glyphs;
  /** The toy in the garment, for the first page. */
  readonly worn?: WornPicture | undefined;
};

/**
 * A laid out draft as PDF at true scale: one user-space unit is 1/72 in (ISO 32000-1, 8.3.2.3), every page the size of
 * its paper, viewers asked not to scale. The same draft and layout give the same bytes.
 */
export function toPdf(draft: Draft, layout: Layout, { say, units, glyphs, worn }: PdfOptions): Uint8Array {
  const { correction, pages } = layout;
  const [first] = pages;
  const size = first ? [first.width * correction, first.height * correction] : [210, 297];
  const pdf = blankPdf(size, draft, { id: JSON.stringify([draft, layout, worn]), title: madeFor(draft, say) });
  pdf.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true });
  const brush = pdfBrush(pdf, correction, glyphs);
  pages.forEach((page, index) => {
    const own = [page.width * correction, page.height * correction];
    if (index > 0) pdf.addPage(own, orientation(own));
    for (const ink of pageInk(draft, layout, page, { say, units, widthOf: brush.widthOf, worn })) brush.draw(ink);
  });
  return new Uint8Array(pdf.output('arraybuffer'));
}

/** A file with one empty page, named and dated by its draft; `id` is all that it is made from. */
export function blankPdf(
  size: readonly number[],
  { order, engine }: Pick<Draft, 'engine'> & { readonly order: Pick<Draft['order'], 'date'> },
  { id, title }: { readonly id: string; readonly title: string },
): jsPDF {
  const pdf = new jsPDF({
    unit: 'mm',
    format: [...size],
    orientation: orientation(size),
    precision: 4,
    compress: true,
    putOnlyUsedFonts: true,
  });
  pdf.setFileId(fingerprint(id));
  pdf.setCreationDate(creationDate(order.date));
  pdf.setProperties({ title, creator: `Hemling ${engine}` });
  return pdf;
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
