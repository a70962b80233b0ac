import { ENGINE } from '../engine';
import { findPaper, papers } from '../sheets/papers';
import { blankPdf, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { testPageInk } from './test-page-ink';

/** A page to test the printer with, on the paper that the pattern will be on: at 100 %, whatever was put right before. */
export function toTestPdf({
  say,
  script,
  date,
  paper,
}: PdfOptions & { readonly date: string; readonly paper: string }) {
  const found = findPaper(paper);
  const { width, height } = found && !found.roll ? found : papers.a4;
  const about = { id: JSON.stringify(['test page', paper, date]), title: say('print.test.title') };
  const pdf = blankPdf([width, height], { engine: ENGINE, order: { date } }, { ...about, script });
  pdf.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true });
  const brush = pdfBrush(pdf, 1, script);
  for (const ink of testPageInk({ width, height }, say, brush.widthOf)) brush.draw(ink);
  return new Uint8Array(pdf.output('arraybuffer'));
}
