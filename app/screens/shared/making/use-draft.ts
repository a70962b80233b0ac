import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Body, Flag, Order } from '../../../body';
import type { Draft } from '../../../drafting/draft-types';
import { draft, WorkError } from '../../../work/bridge';
import { codeOf, noteHappening } from '../trouble/happened';

/** How the drawing stands. While a new one is made the last stays in sight. */
export type DrawingState =
  | { readonly is: 'drawing'; readonly last: Draft | null }
  | { readonly is: 'drawn'; readonly draft: Draft }
  | { readonly is: 'refused'; readonly flags: readonly Flag[] }
  | { readonly is: 'failed'; readonly code: string };

/** Draws a garment for a body, in the worker, anew whenever a number or a choice changes; null body: nothing yet. */
export function useDraft(body: Body | null, order: Order, toy: string): DrawingState {
  const [drawn, setDrawn] = useState<DrawingState>({ is: 'drawing', last: null });
  const last = useRef<Draft | null>(null);
  const key = useMemo(() => JSON.stringify([body, order, toy]), [body, order, toy]);
  useEffect(() => {
    if (!body) return;
    const stop = new AbortController();
    setDrawn({ is: 'drawing', last: last.current });
    draft(body, order, toy, { signal: stop.signal }).then(
      (outcome) => {
        if (stop.signal.aborted) return;
        last.current = outcome.ok ? outcome.draft : last.current;
        setDrawn(outcome.ok ? { is: 'drawn', draft: outcome.draft } : { is: 'refused', flags: outcome.flags });
      },
      (error) => {
        if (stop.signal.aborted || (error instanceof WorkError && error.code === 'work-cancelled')) return;
        noteHappening(error);
        setDrawn({ is: 'failed', code: codeOf(error) });
      },
    );
    return () => stop.abort();
  }, [key]);
  return drawn;
}

/** The draft in sight, if any. */
export const draftOf = (drawn: DrawingState): Draft | null =>
  drawn.is === 'drawn' ? drawn.draft : drawn.is === 'drawing' ? drawn.last : null;
