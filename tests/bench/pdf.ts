// What a pattern's PDF costs beside a bare program of the PDF library that writes the same paths and words.

import { jsPDF } from 'jspdf';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Path } from '../../app/drafting/geometry';
import { type Ink, pagesInk, pensOf, toPdf } from '../../app/drafting/output';
import { pdfBrush } from '../../app/drafting/output/pdf-brush';
import { findPaper, layOut } from '../../app/drafting/sheets';
import { bodyFrom, demoCards } from '../../app/measuring';
import { createSay } from '../../app/words';

const GARMENTS = ['hooded-top', 'dress', 'trousers', 'fitted-coat', 'tunic', 'cape'] as const;
const DEGREES = 180 / Math.PI;
const GREYS = 255;

type Page = { readonly width: number; readonly height: number; readonly ink: readonly Ink[] };

/** Prints time and bytes of each as a ratio to the bare program's, medians of `runs`. */
export async function benchPdf(runs: number): Promise<void> {
  const say = await createSay('en');
  const paper = findPaper('a4');
  if (!paper) throw new RangeError('a4');
  for (const garment of GARMENTS) {
    const drafted = demoCards.flatMap((card) => {
      const full = fullOrder({ garment }, card.taken);
      if (!full.ok || !full.garment.bodies.includes(card.toy.body)) return [];
      const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
      return outcome.ok ? [outcome.draft] : [];
    })[0];
    if (!drafted) continue;
    const layout = layOut(drafted, paper, { effort: 4, seed: 1 });
    const set = (): readonly Page[] => {
      const { widthOf } = pdfBrush(new jsPDF(), 1);
      const inkOn = pagesInk(drafted, layout, { say, units: 'cm', widthOf });
      return layout.pages.map((page) => ({ ...page, ink: inkOn(page) }));
    };
    const pages = set();
    const ours = () => toPdf([{ draft: drafted, layout }], { say, units: 'cm' });
    const [time = 0, setting = 0, least = 0] = timed(runs, [ours, set, () => bare(pages)]);
    const bytes = ours().byteLength / bare(pages).byteLength;
    const [whole, written] = [time / least, (time - setting) / least].map((ratio) => ratio.toFixed(2));
    console.log(
      `${garment}: ${pages.length} pages, ${time.toFixed(1)} ms, ${setting.toFixed(1)} of them to find words their room, ` +
        `beside ${least.toFixed(1)}: × ${whole}, to write alone × ${written}, bytes × ${bytes.toFixed(2)}`,
    );
  }
}

/** The medians of works done in turns, ms of processor time. */
function timed(runs: number, works: readonly (() => unknown)[]): readonly number[] {
  const clock = (work: () => unknown): number => {
    const before = process.cpuUsage().user;
    work();
    return (process.cpuUsage().user - before) / 1000;
  };
  const rounds = Array.from({ length: runs + 3 }, () => works.map(clock)).slice(3);
  return works.map((_, at) => middle(rounds.map((round) => round[at] ?? Number.NaN)));
}

const middle = (all: readonly number[]): number =>
  [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? Number.NaN;

function bare(pages: readonly Page[]): Uint8Array {
  const [first] = pages;
  if (!first) throw new RangeError('no page');
  const pdf = new jsPDF({
    unit: 'mm',
    format: [first.width, first.height],
    compress: true,
    putOnlyUsedFonts: true,
    precision: 4,
  });
  pages.forEach(({ width, height, ink }, at) => {
    if (at > 0) pdf.addPage([width, height]);
    for (const each of ink) write(pdf, each);
  });
  return new Uint8Array(pdf.output('arraybuffer'));
}

function write(pdf: jsPDF, ink: Ink): void {
  if (ink.kind === 'words') {
    pdf.setFont('helvetica', ink.bold ? 'bold' : 'normal');
    pdf.setFontSize(ink.size);
    pdf.text(ink.text, ink.at.x, ink.at.y, { angle: -ink.turn * DEGREES });
    return;
  }
  if (ink.kind === 'fill') {
    const level = Math.round(ink.grey * GREYS);
    pdf.setFillColor(level, level, level);
    follow(pdf, ink.path);
    pdf.fill();
    return;
  }
  const { width, dash, grey } = pensOf.usual[ink.pen];
  pdf.setLineWidth(width);
  pdf.setLineDashPattern([...dash], 0);
  pdf.setDrawColor(Math.round(grey * GREYS));
  follow(pdf, ink.path);
  if (ink.closed) pdf.close();
  pdf.stroke();
}

function follow(pdf: jsPDF, [first, ...rest]: Path): void {
  if (!first) return;
  pdf.moveTo(first.from.x, first.from.y);
  for (const curve of [first, ...rest]) {
    const { to } = curve;
    if (curve.kind === 'line') pdf.lineTo(to.x, to.y);
    else pdf.curveTo(curve.out.x, curve.out.y, curve.into.x, curve.into.y, to.x, to.y);
  }
}
