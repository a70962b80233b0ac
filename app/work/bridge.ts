/**
 * The one bridge to the worker: drafting, laying out and printing happen there, never on the page's own thread. Each
 * request can be cancelled, the latest of its lane wins. No job's own code lives here, so a page that imports this
 * loads none of it.
 */
import type { Body, Order } from '../body';
import type { Answer } from '../drafting/cloth';
import type { Draft, Outcome } from '../drafting/draft-types';
import type { LaidOnCloth, NumbersSheet, PatternOptions, Sheets, ShortTwin } from '../drafting/output';
import type { Form, LayOutOptions, Layout } from '../drafting/sheets';
import { type AskOptions, connectWorker } from './connect';
import type { ClothGiven, Hand } from './jobs';
import { trustedAddress } from './trusted-address';
import workerAddress from './worker?worker&url';

export { type AskOptions, type WorkCode, WorkError } from './connect';

const worker = connectWorker(() => new Worker(trustedAddress(workerAddress), { type: 'module' }));

/**
 * Drafts a garment for a body. `toy` is the name to print. Resolves with an Outcome (refusals are flags, not errors);
 * rejects with WorkError: `work-cancelled` by `signal` or by a later call of the same lane, `work-failed`, `work-slow`,
 * or what `fullOrder` finds wrong with the order.
 */
export const draft = (body: Body, order: Order, toy: string, options?: AskOptions): Promise<Outcome> =>
  worker.ask('draft', { body, order, toy, today: today() }, options);

/** Lays the pieces of a draft on sheets; options as `layOut` of sheets has them. Rejects with `unknown-paper` too. */
export const layOut = (
  given: Draft,
  paper: string,
  options: AskOptions & Partial<LayOutOptions> = {},
): Promise<Layout> => {
  const { signal, progress, lane, ...how } = options;
  return worker.ask('layOut', { draft: given, paper, ...how }, options);
};

type Written = AskOptions & Hand;

/** The PDF of laid out drafts, its words in `language` (BCP 47), as bytes; options as `toPdf` of output has them. */
export const print = (
  sheets: readonly Sheets[],
  options: Written & Pick<PatternOptions, 'only' | 'copies' | 'list'>,
): Promise<Uint8Array> => {
  const { signal, progress, lane, ...how } = options;
  return worker.ask('print', { sheets, ...how }, options);
};

/** A page to test the printer with, as PDF. */
export const printTest = (paper: string, { language, units, print, ...options }: Written): Promise<Uint8Array> =>
  worker.ask('printTest', { paper, language, units, print, today: today() }, options);

/** The pieces of a draft as one SVG, for machines that cut and projectors. */
export const drawSvg = (given: Draft, form: Form, { language, units, ...options }: Written): Promise<string> =>
  worker.ask('drawSvg', { draft: given, form, language, units }, options);

/** All that is printed of a draft as one page of HTML, to be read: with the sewing by machine or by hand. */
export const writeTwin = (
  { draft, layout }: { readonly draft: Draft; readonly layout?: Layout | undefined },
  { language, units, way, ...options }: Written & { readonly way: 'machine' | 'hand' },
): Promise<string> => worker.ask('writeTwin', { draft, layout, way, language, units }, options);

/** What else is printed, as a page of HTML to be read. */
export const writeShortTwin = (what: ShortTwin, { language, units, ...options }: Written): Promise<string> =>
  worker.ask('writeShortTwin', { what, language, units }, options);

/** Lays pieces on cloth; `better` hears the first answer and each that is better, until the time is up. */
export const layCloth = (
  given: ClothGiven,
  { better, ...options }: AskOptions & { readonly better: (answer: Answer, share: number) => void },
): Promise<Answer> => {
  let last: Answer | undefined;
  const progress = (share: number, soFar?: unknown): void => {
    last = (soFar as Answer | undefined) ?? last;
    if (last) better(last, share);
  };
  return worker.ask('layCloth', given, { ...options, progress });
};

/** A lay on cloth as PDF. */
export const printCloth = (laid: LaidOnCloth, { language, units, print, ...options }: Written): Promise<Uint8Array> =>
  worker.ask('printCloth', { ...laid, language, units, print }, options);

/** The sewing of a draft as PDF, by machine or by hand, as bytes. */
export const printGuide = (
  given: Draft,
  { language, units, print, way, ...options }: Written & { readonly way: 'machine' | 'hand' },
): Promise<Uint8Array> => worker.ask('printGuide', { draft: given, way, language, units, print }, options);

/** The pencil plan of a draft as PDF: numbers for a ruler. */
export const printPencil = (given: Draft, { language, units, print, ...options }: Written): Promise<Uint8Array> =>
  worker.ask('printPencil', { draft: given, language, units, print }, options);

/** A tape of paper and a gauge for stretch as PDF. */
export const printTape = ({ language, units, print, ...options }: Written): Promise<Uint8Array> =>
  worker.ask('printTape', { language, units, print, today: today() }, options);

/** A sheet to write numbers on, away from the phone, as PDF. */
export const printNumbers = (
  sheet: NumbersSheet,
  { language, units, print, ...options }: Written,
): Promise<Uint8Array> => worker.ask('printNumbers', { sheet, language, units, print, today: today() }, options);

/** Ends the worker at once; the next request starts a new one. */
export const endWork = (): void => worker.dismiss();

/** The calendar day where the maker is, ISO 8601. */
function today(): string {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}
