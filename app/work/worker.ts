/** The worker's entry: each job loads what it needs when it is first asked for. */

import { JobError, type Workers } from './jobs';
import { withPictures } from './letter-pictures';
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

  print: async ({ draft, layout, language, units, worn }) => {
    const [{ toPdf }, { createSay }] = await Promise.all([import('../drafting/output'), import('../words')]);
    const say = await createSay(language);
    return withPictures((glyphs) => toPdf(draft, layout, { say, units, glyphs, worn }));
  },

  printPencil: async ({ draft, language, units }) => {
    const [{ toPencilPdf }, { createSay }] = await Promise.all([import('../drafting/output'), import('../words')]);
    const say = await createSay(language);
    return withPictures((glyphs) => toPencilPdf(draft, { say, units, glyphs }));
  },

  printTape: async ({ language, units, today }) => {
    const [{ toTapePdf }, { createSay }] = await Promise.all([import('../drafting/output'), import('../words')]);
    const say = await createSay(language);
    return withPictures((glyphs) => toTapePdf({ say, units, date: today, glyphs }));
  },

  printGuide: async ({ draft, way, language, units }) => {
    const [{ toGuidePdf }, { createSay }] = await Promise.all([import('../drafting/output'), import('../words')]);
    const say = await createSay(language);
    return withPictures((glyphs) => toGuidePdf(draft, { say, units, way, glyphs }));
  },
};

serveJobs(workers, self as Desk);
