import type { Body, Order, Unit } from '../body';
import type { Draft, Outcome } from '../drafting/draft-types';

/** What sheets make of a draft: pages with pieces on them. */
export type Layout = { readonly pages: readonly unknown[] };

/** Every job of the worker: what is given and what is made of it. Both cross as structured clones. */
export type Jobs = {
  readonly draft: {
    readonly given: { readonly body: Body; readonly order: Order; readonly toy: string };
    readonly made: Outcome;
  };
  readonly layOut: {
    readonly given: { readonly draft: Draft; readonly paper: string; readonly effort: number; readonly seed: number };
    readonly made: Layout;
  };
  /** `language` is a BCP 47 tag: the worker says the words itself. Made: the bytes of the PDF. */
  readonly print: {
    readonly given: { readonly draft: Draft; readonly layout: Layout; readonly language: string; readonly units: Unit };
    readonly made: Uint8Array;
  };
};
export type JobKind = keyof Jobs;

/** What a job may use while it works. `progress` takes 0 to 1. */
export type AtWork = { readonly signal: AbortSignal; readonly progress: (share: number) => void };
export type Workers = { readonly [K in JobKind]: (given: Jobs[K]['given'], at: AtWork) => Promise<Jobs[K]['made']> };

/** To the worker: do a job, or stop doing it. */
export type Asked =
  | { readonly id: number; readonly kind: JobKind; readonly given: unknown }
  | { readonly id: number; readonly stop: true };

/** From the worker: done, failed with a code, or how far it is. */
export type Answered =
  | { readonly id: number; readonly made: unknown }
  | { readonly id: number; readonly code: string; readonly detail: string }
  | { readonly id: number; readonly progress: number };
