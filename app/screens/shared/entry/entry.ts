import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { type Hand, type LengthFault, type MeasureId, type Mm, parseLength } from '../../../body';
import { settle } from '../../../measuring';
import { fieldText } from '../../../parts';
import { type Reading, type StoreError, saveReading, type Typed } from '../../../storage';
import { forgetTyped, noteTyped, typedFor } from '../../../storage/typed';
import { noteHappening } from '../trouble/happened';
import { useLeaving, usePause } from './moments';

/** What the line under the field says. */
export type EntryState =
  | { readonly is: 'rest' }
  | { readonly is: 'saving' }
  | { readonly is: 'saved' }
  | { readonly is: 'wrong'; readonly code: LengthFault }
  | { readonly is: 'failed'; readonly error: StoreError; readonly typed: string };

export type Entry = {
  readonly text: string;
  readonly state: EntryState;
  /** What stands in the field was kept before, and nothing was typed since. */
  readonly kept: boolean;
  /** One more reading is being taken, beside those there are. */
  readonly adding: boolean;
  readonly type: (text: string) => void;
  /** Puts a length into the field and keeps it: a suggestion that was accepted. */
  readonly put: (mm: Mm) => Promise<boolean>;
  /** Keeps what stands in the field now. True where it is kept, or nothing was typed. */
  readonly keep: () => Promise<boolean>;
  /**
   * Keeps what stands in the field and empties it at once: for one more reading, or to measure anew in the place of
   * what is there. What cannot be kept stays in the field.
   */
  readonly clear: (more: boolean) => Promise<boolean>;
  /** Shows a length that is kept already. */
  readonly show: (mm: Mm) => void;
  /** Writes the same length in another unit; what is kept stays. */
  readonly rewrite: (hand: Hand) => void;
};

/**
 * A number on its way: `exact`, the length its text stands for, where it was not typed; `own`, the reading it was kept
 * as on this visit; `typed`, that it is not kept yet.
 */
type Writing = { text: string; exact: Mm | null; own: Pick<Reading, 'id'> | null; adding: boolean; typed: boolean };

const blank: Writing = { text: '', exact: null, own: null, adding: false, typed: false };

export type EntryOptions = {
  readonly toyId: string;
  readonly garmentId: string;
  readonly measureId: MeasureId;
  readonly readings: readonly Reading[];
  readonly hand: Hand;
  /** Told when a number could not be kept and its screen is no longer there to say so. */
  readonly onLost: (error: StoreError, typed: string) => void;
};

/**
 * One number being entered. As it is typed it is written down (see typed.ts of storage): what was left over when the app
 * went away stands in the field again. It is kept at the next pause, on the way to any other screen, and when the page is hidden;
 * "saved" is said only once the store has answered. What was typed during this visit takes the place of what was typed
 * before in it; what was measured on an earlier visit stays in the history.
 */
export function useEntry({ toyId, garmentId, measureId, readings, hand, onLost }: EntryOptions): Entry {
  const writing = useRef<Writing | null>(null);
  writing.current ??= leftOver(typedFor(toyId, measureId), hand) ?? begun(readings, hand);
  const gone = useRef(false);
  useEffect(
    () => () => {
      gone.current = true;
    },
    [],
  );
  const [shown, setShown] = useState({ text: writing.current.text, adding: writing.current.adding });
  const [state, setState] = useState<EntryState>({ is: 'rest' });
  const queue = useRef<Promise<boolean>>(Promise.resolve(true));
  const now = useRef({ readings, hand });
  now.current = { readings, hand };
  const inField = () => writing.current ?? blank;

  const show = (next: Writing, said: EntryState = { is: 'rest' }) => {
    writing.current = next;
    setShown({ text: next.text, adding: next.adding });
    setState(said);
  };

  const write = async (number: Writing, mm: Mm): Promise<boolean> => {
    const { text } = number;
    const said = (next: EntryState) => number === inField() && setState(next);
    said({ is: 'saving' });
    try {
      const how = number.own ? { instead: number.own.id } : { anew: !number.adding && now.current.readings.length > 0 };
      number.own = await saveReading(toyId, measureId, mm, 'tape', how);
      if (number.text !== text) return true;
      if (number === inField() || !inField().typed) forgetTyped(toyId, measureId);
      number.typed = false;
      number.exact = mm;
      said({ is: 'saved' });
      return true;
    } catch (error) {
      noteHappening(error);
      const failed: EntryState = { is: 'failed', error: error as StoreError, typed: text };
      if (gone.current) onLost(error as StoreError, text);
      // The field may be waiting for the next reading already: this one comes back into it.
      else if (inField().text === '') show(number, failed);
      else setState(failed);
      return false;
    }
  };

  const keep = useCallback((): Promise<boolean> => {
    const number = inField();
    queue.current = queue.current.then(async () => {
      if (!number.typed) return true;
      if (number.exact !== null) return write(number, number.exact);
      const parsed = parseLength(number.text, now.current.hand);
      if (parsed.ok) return write(number, parsed.mm);
      setState({ is: 'wrong', code: parsed.code });
      return false;
    });
    return queue.current;
  }, []);

  const note = ({ text, typed, adding, own }: Writing) => {
    const { unit, locale } = now.current.hand;
    if (typed) noteTyped({ toyId, garmentId, measureId, text, unit, locale, adding, ...(own && { instead: own.id }) });
    else forgetTyped(toyId, measureId);
  };

  usePause(shown.text, () => {
    const { exact, text } = inField();
    if (exact !== null || parseLength(text, hand).ok) void keep();
  });
  useLeaving(keep);

  return {
    ...shown,
    state,
    kept: inField().exact !== null && inField().own === null && !inField().typed,
    keep,
    type: (text) => {
      // Changed in place: it is the same number, whatever of it is being kept this moment.
      const number = Object.assign(inField(), { text, exact: null, typed: text.trim() !== '' });
      note(number);
      show(number);
    },
    clear: (more) => {
      const { text, typed } = inField();
      const kept = keep();
      if (!typed || parseLength(text, hand).ok) show({ ...blank, adding: more });
      return kept;
    },
    show: (mm) => show({ ...blank, text: fieldText(mm, hand), exact: mm }, { is: 'saved' }),
    put: (mm) => {
      show(Object.assign(inField(), { text: fieldText(mm, hand), exact: mm, typed: true }));
      return keep();
    },
    rewrite: (next) => {
      const { exact, text } = inField();
      const parsed = parseLength(text, hand);
      const mm = exact ?? (parsed.ok ? parsed.mm : null);
      if (mm !== null) show(Object.assign(inField(), { text: fieldText(mm, next), exact: mm }), state);
    },
  };
}

/** What was typed here before the app went away; a length in another unit is written in the one chosen since. */
function leftOver(typed: Typed | undefined, hand: Hand): Writing | null {
  if (!typed) return null;
  const { text, unit, locale, adding, instead } = typed;
  const own = instead === undefined ? null : { id: instead };
  if (unit === hand.unit) return { text, exact: null, own, adding, typed: true };
  const parsed = parseLength(text, { unit: unit as Hand['unit'], locale });
  return parsed.ok ? { text: fieldText(parsed.mm, hand), exact: parsed.mm, own, adding, typed: true } : null;
}

function begun(readings: readonly Reading[], hand: Hand): Writing {
  const settled = settle(readings.map((reading) => reading.mm));
  return settled ? { ...blank, text: fieldText(settled.value, hand), exact: settled.value } : { ...blank };
}
