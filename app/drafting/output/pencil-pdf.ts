import type { Draft } from '../draft-types';
import { pencilPlan, planTitle } from '../pencil';
import { papers } from '../sheets/papers';
import { largePencilInk } from './large-pencil';
import { blankPdf, drawnPages, type PdfOptions } from './pdf';
import { pdfBrush } from './pdf-brush';
import { pencilInk } from './pencil-ink';

/** The pencil plan of a draft as PDF, a page or two a piece, on A4 or Letter by the unit: numbers only, true at any size. */
export function toPencilPdf(draft: Draft, { say, units, script, print }: PdfOptions): Uint8Array {
  const page = papers[units === 'in' ? 'letter' : 'a4'];
  const pdf = blankPdf([page.width, page.height], draft, {
    id: JSON.stringify(['pencil', draft, units, print]),
    title: planTitle(draft, say),
    script,
  });
  const brush = pdfBrush(pdf, 1, script, print);
  const pages = pencilPlan(draft, units).flatMap((plan) =>
    (print === 'large' ? largePencilInk : pencilInk)(draft, plan, page, { say, units, widthOf: brush.widthOf }),
  );
  return drawnPages(pdf, brush, pages, page);
}
