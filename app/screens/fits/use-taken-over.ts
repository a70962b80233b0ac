import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import { draft as drafting } from '../../work/bridge';
import type { Making } from '../shared/making/making';
import { noteHappening } from '../shared/trouble/happened';
import { type Reached, takenOver, type Wanted } from './flat-sizes';

export type TakingOver =
  | { readonly is: 'idle' | 'seeking' | 'none' }
  | { readonly is: 'reached'; readonly reached: Reached };

/** What becomes of the pattern with these sizes, drafted in the worker; what was typed before is given up. */
export function useTakenOver({ body, toy, garment }: Making, before: Draft | null, all: readonly Wanted[]): TakingOver {
  const [taking, setTaking] = useState<TakingOver>({ is: 'idle' });
  const key = all.map(({ id, wanted }) => `${id} ${wanted}`).join();
  useEffect(() => {
    if (!before || all.length === 0) return setTaking({ is: 'idle' });
    const stop = new AbortController();
    const { signal } = stop;
    setTaking({ is: 'seeking' });
    takenOver(before, toy.corrections, all, (corrections) =>
      drafting({ ...body, corrections }, garment.order, toy.name, { signal, lane: 'tried' }),
    ).then(
      (reached) => !signal.aborted && setTaking(reached ? { is: 'reached', reached } : { is: 'none' }),
      (error) => {
        if (signal.aborted) return;
        noteHappening(error);
        setTaking({ is: 'none' });
      },
    );
    return () => stop.abort();
  }, [key, before]);
  return taking;
}
