import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { type Hand, type LengthFault, type MeasureId, type Mm, parseLength } from '../../body';
import { settle } from '../../measuring';
import { fieldText } from '../../parts';
import { type Reading, type StoreError, saveReading } from '../../storage';
import { noteHappening } from '../shell/happened';

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
  /** Readings beside the one in the field. */
  readonly adding: boolean;
  readonly type: (text: string) => void;
  /** Puts a length into the field and keeps it (a suggestion, a correction). */
  readonly put: (mm: Mm) => Promise<boolean>;
  /** Keeps what stands in the field now. True where it is kept, or nothing was typed. */
  readonly keep: () => Promise<boolean>;
  /** Empties the field for one more reading. */
  readonly again: () => void;
  /** Empties the field to measure anew: what is typed next counts in the place of what was there. */
  readonly anew: () => void;
  /** Writes the text in another unit; what is kept stays. */
  readonly rewrite: (hand: Hand) => void;
};

/** A pause in typing this long counts as a number entered, ms: long enough to find the next key. */
const PAUSE_MS = 700;

type Writing = { own: Reading | null; adding: boolean; typed: boolean; text: string };

/**
 * One number being entered. It is kept at the next pause, on the way to any other screen, and when the page is hidden;
 * "saved" is said only once the store has answered. What was typed during this visit takes the place of what was typed
 * before in it; what was measured on an earlier visit stays in the history.
 */
export function useEntry(toyId: string, measureId: MeasureId, readings: readonly Reading[], hand: Hand): Entry {
  const [text, setText] = useState(() => startingText(readings, hand));
  const [state, setState] = useState<EntryState>({ is: 'rest' });
  const [adding, setAdding] = useState(false);
  const writing = useRef<Writing>({ own: null, adding: false, typed: false, text });
  const queue = useRef<Promise<boolean>>(Promise.resolve(true));
  const earlier = useRef(readings);
  earlier.current = readings;
  const handNow = useRef(hand);
  handNow.current = hand;

  const keep = useCallback(() => {
    queue.current = queue.current.then(async () => {
      const now = writing.current;
      if (!now.typed) return true;
      const parsed = parseLength(now.text, handNow.current);
      if (!parsed.ok) {
        setState({ is: 'wrong', code: parsed.code });
        return false;
      }
      return write(parsed.mm);
    });
    return queue.current;
  }, []);

  async function write(mm: Mm): Promise<boolean> {
    const now = writing.current;
    const typed = now.text;
    setState({ is: 'saving' });
    try {
      const how = now.own ? { instead: now.own.id } : { anew: !now.adding && earlier.current.length > 0 };
      now.own = await saveReading(toyId, measureId, mm, 'tape', how);
      if (now.text === typed) {
        now.typed = false;
        setState({ is: 'saved' });
      }
      return true;
    } catch (error) {
      noteHappening(error);
      setState({ is: 'failed', error: error as StoreError, typed });
      return false;
    }
  }

  const type = (next: string) => {
    writing.current.text = next;
    writing.current.typed = next.trim() !== '';
    setText(next);
    setState({ is: 'rest' });
  };

  const clear = (more: boolean) => {
    writing.current = { own: null, adding: more, typed: false, text: '' };
    setAdding(more);
    setText('');
    setState({ is: 'rest' });
  };

  usePause(text, () => {
    if (writing.current.typed && parseLength(writing.current.text, handNow.current).ok) void keep();
  });
  useLeaving(keep);

  return {
    text,
    state,
    adding,
    type,
    keep,
    put: (mm) => {
      type(fieldText(mm, hand));
      return write(mm);
    },
    again: () => clear(true),
    anew: () => clear(false),
    rewrite: (next) => {
      const parsed = parseLength(text, hand);
      const mm = writing.current.own?.mm ?? (parsed.ok ? parsed.mm : null);
      if (mm === null || !parsed.ok) return;
      const rewritten = fieldText(mm, next);
      writing.current.text = rewritten;
      setText(rewritten);
    },
  };
}

function startingText(readings: readonly Reading[], hand: Hand): string {
  const settled = settle(readings.map((reading) => reading.mm));
  return settled ? fieldText(settled.value, hand) : '';
}

function usePause(text: string, then: () => void): void {
  useEffect(() => {
    const timer = setTimeout(then, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
}

/** Keeps on the way out: another screen, another app, a closed lid. */
function useLeaving(keep: () => Promise<boolean>): void {
  useEffect(() => {
    const hidden = () => {
      if (document.visibilityState === 'hidden') void keep();
    };
    document.addEventListener('visibilitychange', hidden);
    addEventListener('pagehide', hidden);
    return () => {
      document.removeEventListener('visibilitychange', hidden);
      removeEventListener('pagehide', hidden);
      void keep();
    };
  }, []);
}
