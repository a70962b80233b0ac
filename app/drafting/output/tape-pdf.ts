import { ENGINE } from '../engine';
import { papers } from '../sheets/papers';
import { blankPdf, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { tapeInk } from './tape-ink';

/** The tape and the gauge as PDF: one page on its side, A4 or Letter by the unit, never to be scaled. */
export function toTapePdf({ say, units, script, date }: PdfOptions & { readonly date: string }): Uint8Array {
  const { width, height } = papers[units === 'in' ? 'letter' : 'a4'];
  const about = { id: JSON.stringify(['tape', units, date]), title: say('tape.title') };
  const pdf = blankPdf([height, width], { engine: ENGINE, order: { date } }, { ...about, script });
  pdf.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true });
  const brush = pdfBrush(pdf, 1, script);
  for (const ink of tapeInk(say, brush.widthOf)) brush.draw(ink);
  return new Uint8Array(pdf.output('arraybuffer'));
}
