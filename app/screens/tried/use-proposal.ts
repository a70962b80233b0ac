import { useEffect, useState } from 'preact/hooks';
import type { Mm } from '../../body';
import type { Draft } from '../../drafting/draft-types';
import { draft as drafting } from '../../work/bridge';
import type { Making } from '../shared/making/making';
import { noteHappening } from '../shared/trouble/happened';
import type { TriedPoint, Wrong } from '../shared/trying/points';
import { type Proposal, propose } from '../shared/trying/propose';

export type Seeking =
  | { readonly is: 'idle' | 'seeking' | 'none' }
  | { readonly is: 'proposed'; readonly proposal: Proposal };

type Told = { readonly point: TriedPoint; readonly wrong: Wrong; readonly amount: Mm };

/** What would be changed for what was told, drafted in the worker; what was told before is given up. */
export function useProposal({ body, garment, toy }: Making, before: Draft | null, told: Told | null): Seeking {
  const [seeking, setSeeking] = useState<Seeking>({ is: 'idle' });
  const key = told && `${told.point.id} ${told.wrong} ${told.amount}`;
  useEffect(() => {
    if (!told || !before) return setSeeking({ is: 'idle' });
    const stop = new AbortController();
    const { signal } = stop;
    setSeeking({ is: 'seeking' });
    propose(before, body.corrections, told, (corrections) =>
      drafting({ ...body, corrections }, garment.order, toy.name, { signal, lane: 'tried' }),
    ).then(
      (proposal) => !signal.aborted && setSeeking(proposal ? { is: 'proposed', proposal } : { is: 'none' }),
      (error) => {
        if (signal.aborted) return;
        noteHappening(error);
        setSeeking({ is: 'none' });
      },
    );
    return () => stop.abort();
  }, [key, before]);
  return seeking;
}
