/** The worker's entry: each job loads what it needs when it is first asked for. */

import type { PdfOptions, ReadOptions } from '../drafting/output';
import { type Hand, JobError, type Workers } from './jobs';
import { type Desk, serveJobs } from './serve';

const workers: Workers = {
  draft: async ({ body, order, toy, today }) => {
    const { draft, fullOrder } = await import('../drafting/draft');
    const full = fullOrder(order, today);
    if (!full.ok) throw new JobError(full.fault.code, full.fault.where);
    return draft(body, full.order, full.garment, toy);
  },

  layOut: async ({ draft, paper: id, effort, seed = 1, ...options }) => {
    const { findPaper, layOut, USUAL_EFFORT } = await import('../drafting/sheets');
    const paper = findPaper(id);
    if (!paper) throw new JobError('unknown-paper', id);
    return layOut(draft, paper, { effort: effort ?? USUAL_EFFORT, seed, ...options });
  },

  print: ({ sheets, only, copies, list, ...hand }) =>
    onPaper(hand, ({ toPdf }, written) =>
      toPdf(sheets, { ...written, ...(only && { only }), ...(copies && { copies }), ...(list && { list }) }),
    ),
  printTest: ({ paper, today, ...hand }) =>
    onPaper(hand, ({ toTestPdf }, written) => toTestPdf({ ...written, paper, date: today })),
  layCloth: async (given, at) => (await import('./lay-cloth')).layCloth(given, at),
  printCloth: ({ language, units, print, ...laid }) =>
    onPaper({ language, units, print }, ({ toClothPdf }, written) => toClothPdf(laid, written)),
  drawSvg: async ({ draft, form, language, units }) => {
    const [{ toSvg }, { createSay, directionOf }] = await Promise.all([
      import('../drafting/output'),
      import('../words'),
    ]);
    return toSvg(draft, await createSay(language), { form, units, direction: directionOf(language) });
  },
  writeTwin: ({ draft, language, ...how }) =>
    toRead(language, ({ toTwin }, written) => toTwin(draft, { ...how, ...written })),
  writeShortTwin: ({ what, language, units }) =>
    toRead(language, ({ toShortTwin }, written) => toShortTwin(what, { units, ...written })),
  printPencil: ({ draft, ...hand }) => onPaper(hand, ({ toPencilPdf }, written) => toPencilPdf(draft, written)),
  printTape: ({ today, ...hand }) => onPaper(hand, ({ toTapePdf }, written) => toTapePdf({ ...written, date: today })),
  printNumbers: ({ sheet, today, ...hand }) =>
    onPaper(hand, ({ toNumbersPdf }, written) => toNumbersPdf(sheet, { ...written, date: today })),
  printGuide: ({ draft, way, ...hand }) =>
    onPaper(hand, ({ toGuidePdf }, written) => toGuidePdf(draft, { ...written, way })),
};

type Output = typeof import('../drafting/output');

/** What every page to read is written with. */
async function toRead(
  language: string,
  write: (output: Output, written: Pick<ReadOptions, 'say' | 'language' | 'direction'>) => string,
): Promise<string> {
  const [output, { createSay, directionOf }] = await Promise.all([import('../drafting/output'), import('../words')]);
  return write(output, { say: await createSay(language), language, direction: directionOf(language) });
}

/** What every PDF is written with: words in the maker's language, her unit, and letters that every reader's fonts lack. */
async function onPaper<T>(
  { language, units, print }: Hand,
  write: (output: Output, written: PdfOptions) => T,
): Promise<T> {
  const [output, { withLetters }, { createSay, directionOf }] = await Promise.all([
    import('../drafting/output'),
    import('./letters'),
    import('../words'),
  ]);
  const say = await createSay(language);
  const direction = directionOf(language);
  return withLetters(language, (letters) =>
    write(output, { say, units, print, script: { language, direction, ...letters } }),
  );
}

serveJobs(workers, self as Desk);
