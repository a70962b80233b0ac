import { ENGINE } from '../engine';
import { findPaper, papers } from '../sheets/papers';
import { blankPdf, drawnPages, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { largeTestInk, testPageInk } from './test-page-ink';

/**
 * A page to test the printer with, on the paper that the pattern will be on: at 100 %, whatever was put right before. In
 * large print its words stand on a page behind it.
 */
export function toTestPdf({
  say,
  script,
  print = 'usual',
  date,
  paper,
}: PdfOptions & { readonly date: string; readonly paper: string }) {
  const found = findPaper(paper);
  const page = found && !found.roll ? found : papers.a4;
  const about = { id: JSON.stringify(['test page', paper, print, date]), title: say('print.test.title') };
  const pdf = blankPdf([page.width, page.height], { engine: ENGINE, order: { date } }, { ...about, script });
  pdf.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true });
  const brush = pdfBrush(pdf, 1, script, print);
  const ink = print === 'large' ? largeTestInk : (...on: Parameters<typeof testPageInk>) => [testPageInk(...on)];
  return drawnPages(pdf, brush, ink(page, say, brush.widthOf), page);
}
