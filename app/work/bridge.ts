/**
 * The one bridge to the worker: drafting, laying out and printing happen there, never on the page's own thread. Each
 * request can be cancelled, the latest of its lane wins. No job's own code lives here, so a page that imports this
 * loads none of it.
 */
import type { Body, Order, Unit } from '../body';
import type { Draft, Outcome } from '../drafting/draft-types';
import type { WornPicture } from '../drafting/output';
import type { LayOutOptions, Layout } from '../drafting/sheets';
import { type AskOptions, connectWorker } from './connect';
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

/** The PDF of a laid out draft, its words in `language` (BCP 47), `worn` on its first page, as bytes. */
export const print = (
  given: Draft,
  layout: Layout,
  {
    language,
    units,
    worn,
    ...options
  }: AskOptions & {
    readonly language: string;
    readonly units: Unit;
    readonly worn?: WornPicture;
  },
): Promise<Uint8Array> => worker.ask('print', { draft: given, layout, language, units, worn }, options);

/** The sewing of a draft as PDF, by machine or by hand, as bytes. */
export const printGuide = (
  given: Draft,
  {
    language,
    units,
    way,
    ...options
  }: AskOptions & { readonly language: string; readonly units: Unit; readonly way: 'machine' | 'hand' },
): Promise<Uint8Array> => worker.ask('printGuide', { draft: given, way, language, units }, options);

/** The pencil plan of a draft as PDF: numbers for a ruler. */
export const printPencil = (
  given: Draft,
  { language, units, ...options }: AskOptions & { readonly language: string; readonly units: Unit },
): Promise<Uint8Array> => worker.ask('printPencil', { draft: given, language, units }, options);

/** A tape of paper and a gauge for stretch as PDF. */
export const printTape = ({
  language,
  units,
  ...options
}: AskOptions & { readonly language: string; readonly units: Unit }): Promise<Uint8Array> =>
  worker.ask('printTape', { language, units, today: today() }, options);

/** Ends the worker at once; the next request starts a new one. */
export const endWork = (): void => worker.dismiss();

/** The calendar day where the maker is, ISO 8601. */
function today(): string {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}
