import type { Form } from '../../drafting/sheets';

/** How it is to be printed this time, beside paper and halves, which are kept in the settings. */
export type PrintWish = {
  readonly form: Form;
  /** Pieces left out, by their place in the draft. */
  readonly without: readonly number[];
  /** Pages of words, and a label for the bag. */
  readonly list: boolean;
  readonly copies: number;
};

export const USUAL_WISH: PrintWish = { form: 'cut', without: [], list: false, copies: 1 };
