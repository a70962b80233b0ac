import type { Body, Order, Unit } from '../body';
import type { Draft, Outcome } from '../drafting/draft-types';
import type { WornPicture } from '../drafting/output';
import type { LayOutOptions, Layout } from '../drafting/sheets';

type DraftGiven = { readonly body: Body; readonly order: Order; readonly toy: string; readonly today: string };
type LayOutGiven = { readonly draft: Draft; readonly paper: string } & Partial<LayOutOptions>;
type GuideGiven = {
  readonly draft: Draft;
  readonly way: 'machine' | 'hand';
  readonly language: string;
  readonly units: Unit;
};
type TapeGiven = { readonly language: string; readonly units: Unit; readonly today: string };
type PrintGiven = {
  readonly draft: Draft;
  readonly layout: Layout;
  readonly language: string;
  readonly units: Unit;
  readonly worn?: WornPicture | undefined;
};

/**
 * Every job of the worker: what is given and what is made of it, both crossing as structured clones. `today` is an ISO
 * 8601 date, `paper` an id of sheets, `language` a BCP 47 tag (the worker says the words itself); printing makes the
 * bytes of a PDF.
 */
export type Jobs = {
  readonly draft: { readonly given: DraftGiven; readonly made: Outcome };
  readonly layOut: { readonly given: LayOutGiven; readonly made: Layout };
  readonly print: { readonly given: PrintGiven; readonly made: Uint8Array };
  readonly printPencil: { readonly given: Omit<PrintGiven, 'layout'>; readonly made: Uint8Array };
  readonly printTape: { readonly given: TapeGiven; readonly made: Uint8Array };
  readonly printGuide: { readonly given: GuideGiven; readonly made: Uint8Array };
};
export type JobKind = keyof Jobs;

/** What a job may use while it works. `progress` takes 0 to 1. */
export type AtWork = { readonly signal: AbortSignal; readonly progress: (share: number) => void };
export type Workers = {
  readonly [K in JobKind]: (given: Jobs[K]['given'], at: AtWork) => Promise<Jobs[K]['made']>;
};

/** A job that cannot be done as asked: a code, and where in the asking. */
export class JobError extends Error {
  override readonly name = 'JobError';
  constructor(
    readonly code: string,
    where: string,
  ) {
    super(where);
  }
}

/** To the worker: do a job, or stop doing it. */
export type Asked =
  | { readonly id: number; readonly kind: JobKind; readonly given: unknown }
  | { readonly id: number; readonly stop: true };

/** From the worker: done, failed with a code, or how far it is. */
export type Answered =
  | { readonly id: number; readonly made: unknown }
  | { readonly id: number; readonly code: string; readonly detail: string }
  | { readonly id: number; readonly progress: number };
