import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Draft } from '../../../drafting/draft-types';
import { together } from '../../../drafting/outfit';
import { draft, WorkError } from '../../../work/bridge';
import { codeOf, noteHappening } from '../trouble/happened';
import { bodyKnown, type Making } from './making';
import { type DrawingState, useDraft } from './use-draft';

/** Draws all that is being made: the one garment, or those of an outfit one after the other, as one draft. */
export function useWholeDraft(making: Making): DrawingState {
  const several = making.also.length > 0;
  const one = useDraft(several ? null : bodyKnown(making), making.garment.order, making.toy.name);
  const all = useOutfit(several ? making : null);
  return several ? all : one;
}

function useOutfit(making: Making | null): DrawingState {
  const [drawn, setDrawn] = useState<DrawingState>({ is: 'drawing', last: null });
  // What is noted of a garment beside its order, as that it went on paper, draws nothing anew.
  const key = useMemo(
    () =>
      making &&
      JSON.stringify([making.body, making.toy.name, [making, ...making.also].map((each) => each.garment.order)]),
    [making],
  );
  useEffect(() => {
    const body = making && bodyKnown(making);
    if (!making || !body) return;
    const stop = new AbortController();
    const { signal } = stop;
    const drawAll = async () => {
      const drafts: Draft[] = [];
      for (const { garment } of [making, ...making.also]) {
        const outcome = await draft(body, garment.order, making.toy.name, { signal, lane: 'outfit' });
        if (!outcome.ok) return setDrawn({ is: 'refused', flags: outcome.flags });
        drafts.push(outcome.draft);
      }
      setDrawn({ is: 'drawn', draft: together(drafts) });
    };
    setDrawn({ is: 'drawing', last: null });
    drawAll().catch((error) => {
      if (signal.aborted || (error instanceof WorkError && error.code === 'work-cancelled')) return;
      noteHappening(error);
      setDrawn({ is: 'failed', code: codeOf(error) });
    });
    return () => stop.abort();
  }, [key]);
  return drawn;
}
