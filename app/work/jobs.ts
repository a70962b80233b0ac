import type { Body, Order, Unit } from '../body';
import type { Answer, Layer, Stuff } from '../drafting/cloth';
import type { Draft, Outcome } from '../drafting/draft-types';
import type { LaidOnCloth, NumbersSheet, PatternOptions, Sheets, ShortTwin } from '../drafting/output';
import type { Form, LayOutOptions, Layout, Print } from '../drafting/sheets';

type DraftGiven = { readonly body: Body; readonly order: Order; readonly toy: string; readonly today: string };
type LayOutGiven = { readonly draft: Draft; readonly paper: string } & Partial<LayOutOptions>;
/** What words on paper are written with. */
export type Hand = { readonly language: string; readonly units: Unit; readonly print?: Print | undefined };
type GuideGiven = Hand & { readonly draft: Draft; readonly way: 'machine' | 'hand' };
type TwinGiven = GuideGiven & { readonly layout?: Layout | undefined };
type TapeGiven = Hand & { readonly today: string };
type PrintGiven = Hand & { readonly sheets: readonly Sheets[] } & Pick<PatternOptions, 'only' | 'copies' | 'list'>;
type TestGiven = Hand & { readonly paper: string; readonly today: string };
type SvgGiven = Hand & { readonly draft: Draft; readonly form: Form };

/**
 * Every job of the worker: what is given and what is made of it, both crossing as structured clones. `today` is an ISO
 * 8601 date, `paper` an id of sheets, `language` a BCP 47 tag (the worker says the words itself); printing makes the
 * bytes of a PDF.
 */
export type Jobs = {
  readonly draft: { readonly given: DraftGiven; readonly made: Outcome };
  readonly layOut: { readonly given: LayOutGiven; readonly made: Layout };
  readonly print: { readonly given: PrintGiven; readonly made: Uint8Array };
  readonly printTest: { readonly given: TestGiven; readonly made: Uint8Array };
  readonly layCloth: { readonly given: ClothGiven; readonly made: Answer };
  readonly printCloth: { readonly given: Hand & LaidOnCloth; readonly made: Uint8Array };
  readonly drawSvg: { readonly given: SvgGiven; readonly made: string };
  readonly writeTwin: { readonly given: TwinGiven; readonly made: string };
  readonly writeShortTwin: { readonly given: Hand & { readonly what: ShortTwin }; readonly made: string };
  readonly printPencil: { readonly given: Hand & { readonly draft: Draft }; readonly made: Uint8Array };
  readonly printTape: { readonly given: TapeGiven; readonly made: Uint8Array };
  readonly printNumbers: { readonly given: TapeGiven & { readonly sheet: NumbersSheet }; readonly made: Uint8Array };
  readonly printGuide: { readonly given: GuideGiven; readonly made: Uint8Array };
};
/** On which cloth the pieces of some layers of some drafts are laid, and how long is looked for it at most. */
export type ClothGiven = {
  readonly drafts: readonly Draft[];
  readonly layers: readonly Layer[];
  readonly stuff: Stuff;
  readonly seconds: number;
  readonly seed?: number;
};

export type JobKind = keyof Jobs;

/** What a job may use while it works. `progress` takes 0 to 1, and what there is so far where that is new. */
export type AtWork = { readonly signal: AbortSignal; readonly progress: (share: number, soFar?: unknown) => void };
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
  | { readonly id: number; readonly progress: number; readonly soFar?: unknown };
