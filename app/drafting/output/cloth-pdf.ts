import { clothInk, type LaidOnCloth, largeClothInk } from './cloth-ink';
import { blankPdf, drawnPages, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { paperForWords } from './word-pages';

/** A lay as PDF: one page (in large print as many as its words take), small, with a number on each piece and its name below. */
export function toClothPdf(on: LaidOnCloth, { say, units, script, print }: PdfOptions): Uint8Array {
  const [draft] = on.drafts;
  if (!draft) throw new RangeError('nothing to lay');
  const page = paperForWords(draft.order.paper, units);
  const about = { id: JSON.stringify(['cloth', on, units, print]), title: say('lay.title') };
  const pdf = blankPdf([page.width, page.height], draft, { ...about, script });
  const brush = pdfBrush(pdf, 1, script, print);
  const lettering = { say, units, widthOf: brush.widthOf };
  const pages = print === 'large' ? largeClothInk(on, page, lettering) : [clothInk(on, page, lettering)];
  return drawnPages(pdf, brush, pages, page);
}
