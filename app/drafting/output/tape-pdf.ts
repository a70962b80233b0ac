import { ENGINE } from '../engine';
import { papers } from '../sheets/papers';
import { blankPdf, drawnPages, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { largeTapeInk, tapeInk } from './tape-ink';

/** The tape and the gauge as PDF: one page on its side (in large print as many as it takes), A4 or Letter by the unit, never to be scaled. */
export function toTapePdf({
  say,
  units,
  script,
  print = 'usual',
  date,
}: PdfOptions & { readonly date: string }): Uint8Array {
  const paper = papers[units === 'in' ? 'letter' : 'a4'];
  const page = { width: paper.height, height: paper.width };
  const about = { id: JSON.stringify(['tape', units, print, date]), title: say('tape.title') };
  const pdf = blankPdf([page.width, page.height], { engine: ENGINE, order: { date } }, { ...about, script });
  pdf.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true });
  const brush = pdfBrush(pdf, 1, script, print);
  const pages = print === 'large' ? largeTapeInk(page, say, brush.widthOf) : [tapeInk(say, brush.widthOf)];
  return drawnPages(pdf, brush, pages, page);
}
