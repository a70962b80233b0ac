import { clothInk, type LaidOnCloth } from './cloth-ink';
import { blankPdf, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { paperForWords } from './word-pages';

/** A lay as PDF: one page, small, with a number on each piece and its name below. */
export function toClothPdf(on: LaidOnCloth, { say, units, script }: PdfOptions): Uint8Array {
  const [draft] = on.drafts;
  if (!draft) throw new RangeError('nothing to lay');
  const page = paperForWords(draft.order.paper, units);
  const about = { id: JSON.stringify(['cloth', on, units]), title: say('lay.title') };
  const pdf = blankPdf([page.width, page.height], draft, { ...about, script });
  const brush = pdfBrush(pdf, 1, script);
  for (const ink of clothInk(on, page, { say, units, widthOf: brush.widthOf })) brush.draw(ink);
  return new Uint8Array(pdf.output('arraybuffer'));
}
