import { useCallback, useRef, useState } from 'preact/hooks';
import { type Hand, type LengthFault, type MeasureId, type Mm, parseLength } from '../../body';
import { settle } from '../../measuring';
import { fieldText } from '../../parts';
import { type Reading, type StoreError, saveReading } from '../../storage';
import { noteHappening } from '../shell/happened';
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
  /** One more reading is being taken, beside those there are. */
  readonly adding: boolean;
  readonly type: (text: string) => void;
  /** Puts a length into the field and keeps it: a suggestion that was accepted. */
  readonly put: (mm: Mm) => Promise<boolean>;
  /** Keeps what stands in the field now. True where it is kept, or nothing was typed. */
  readonly keep: () => Promise<boolean>;
  /** Empties the field: for one more reading, or to measure anew in the place of what is there. */
  readonly clear: (more: boolean) => void;
  /** Shows a length that is kept already. */
  readonly show: (mm: Mm) => void;
  /** Writes the same length in another unit; what is kept stays. */
  readonly rewrite: (hand: Hand) => void;
};

/**
 * What is known of the text in the field: `exact`, the length it stands for, where it was not typed; `own`, the
 * reading it was kept as on this visit; `typed`, that it is not kept yet.
 */
type Writing = { text: string; exact: Mm | null; own: Reading | null; adding: boolean; typed: boolean };

const blank: Writing = { text: '', exact: null, own: null, adding: false, typed: false };

/**
 * One number being entered. It is kept at the next pause, on the way to any other screen, and when the page is hidden;
 * "saved" is said only once the store has answered. What was typed during this visit takes the place of what was typed
 * before in it; what was measured on an earlier visit stays in the history.
 */
export function useEntry(toyId: string, measureId: MeasureId, readings: readonly Reading[], hand: Hand): Entry {
  const [writing] = useState<Writing>(() => begun(readings, hand));
  const [shown, setShown] = useState({ text: writing.text, adding: false });
  const [state, setState] = useState<EntryState>({ is: 'rest' });
  const queue = useRef<Promise<boolean>>(Promise.resolve(true));
  const now = useRef({ readings, hand });
  now.current = { readings, hand };

  const change = (to: Partial<Writing>, next: EntryState = { is: 'rest' }) => {
    Object.assign(writing, to);
    setShown({ text: writing.text, adding: writing.adding });
    setState(next);
  };

  const write = async (mm: Mm): Promise<boolean> => {
    const typed = writing.text;
    setState({ is: 'saving' });
    try {
      const how = writing.own
        ? { instead: writing.own.id }
        : { anew: !writing.adding && now.current.readings.length > 0 };
      writing.own = await saveReading(toyId, measureId, mm, 'tape', how);
      if (writing.text !== typed) return true;
      writing.typed = false;
      writing.exact = mm;
      setState({ is: 'saved' });
      return true;
    } catch (error) {
      noteHappening(error);
      setState({ is: 'failed', error: error as StoreError, typed });
      return false;
    }
  };

  const keep = useCallback((): Promise<boolean> => {
    queue.current = queue.current.then(async () => {
      if (!writing.typed) return true;
      if (writing.exact !== null) return write(writing.exact);
      const parsed = parseLength(writing.text, now.current.hand);
      if (parsed.ok) return write(parsed.mm);
      setState({ is: 'wrong', code: parsed.code });
      return false;
    });
    return queue.current;
  }, []);

  usePause(shown.text, () => {
    if (writing.exact !== null || parseLength(writing.text, hand).ok) void keep();
  });
  useLeaving(keep);

  return {
    ...shown,
    state,
    keep,
    type: (text) => change({ text, exact: null, typed: text.trim() !== '' }),
    clear: (more) => change({ ...blank, adding: more }),
    show: (mm) => change({ ...blank, text: fieldText(mm, hand), exact: mm }, { is: 'saved' }),
    put: (mm) => {
      change({ text: fieldText(mm, hand), exact: mm });
      queue.current = queue.current.then(() => write(mm));
      return queue.current;
    },
    rewrite: (next) => {
      const parsed = parseLength(writing.text, hand);
      const mm = writing.exact ?? (parsed.ok ? parsed.mm : null);
      if (mm !== null) change({ text: fieldText(mm, next), exact: mm }, state);
    },
  };
}

function begun(readings: readonly Reading[], hand: Hand): Writing {
  const settled = settle(readings.map((reading) => reading.mm));
  return settled ? { ...blank, text: fieldText(settled.value, hand), exact: settled.value } : { ...blank };
}
