import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Answer, Layer, Stuff } from '../../drafting/cloth';
import type { Draft } from '../../drafting/draft-types';
import { draft, layCloth, WorkError } from '../../work/bridge';
import type { Making } from '../shared/making/making';
import { codeOf, noteHappening } from '../shared/trouble/happened';

export type Wanted = { readonly drafts: readonly Draft[]; readonly layers: readonly Layer[]; readonly stuff: Stuff };

/** `looking`: `share` of the time is used, and there may be an answer already. `ended`: by itself, or since she said stop. */
export type Lay =
  | { readonly is: 'looking'; readonly answer: Answer | null; readonly share: number; readonly stop: () => void }
  | { readonly is: 'ended'; readonly answer: Answer | null; readonly seconds: number }
  | { readonly is: 'failed'; readonly code: string };

/** Looks for a lay in the worker for some seconds, anew when what is wanted changes; null where nothing is. */
export function useLay(wanted: Wanted | null, seconds: number): Lay {
  const [lay, setLay] = useState<Lay>({ is: 'ended', answer: null, seconds });
  const key = useMemo(() => wanted && JSON.stringify([wanted.layers, wanted.stuff, seconds]), [wanted, seconds]);
  useEffect(() => {
    if (!wanted) return;
    const end = new AbortController();
    let last: Answer | null = null;
    let over = false;
    const ended = () => {
      over = true;
      setLay({ is: 'ended', answer: last, seconds });
    };
    const stop = () => {
      ended();
      end.abort();
    };
    const tell = (answer: Answer | null, share: number) => {
      last = answer;
      if (!over) setLay({ is: 'looking', answer, share, stop });
    };
    tell(null, 0);
    layCloth({ ...wanted, seconds }, { signal: end.signal, better: tell })
      .then((answer) => {
        last = answer;
        if (!over) ended();
      })
      .catch((error) => {
        if (over || (error instanceof WorkError && error.code === 'work-cancelled')) return;
        noteHappening(error);
        setLay({ is: 'failed', code: codeOf(error) });
      });
    return () => {
      over = true;
      end.abort();
    };
  }, [key, wanted?.drafts]);
  return lay;
}

/** What is made, a draft a garment, and others to be cut along with it; those that cannot be drawn are left out. */
export function useDrafts(made: readonly Draft[], also: readonly Making[]): readonly Draft[] | null {
  const [drafts, setDrafts] = useState<readonly Draft[] | null>(null);
  useEffect(() => {
    const end = new AbortController();
    const draw = async () => {
      const all = [...made];
      for (const { body, garment, toy } of also) {
        const outcome = await draft(body, garment.order, toy.name, { signal: end.signal, lane: 'draft to cut along' });
        if (outcome.ok) all.push(outcome.draft);
      }
      if (!end.signal.aborted) setDrafts(all);
    };
    draw().catch((error) => end.signal.aborted || noteHappening(error));
    return () => end.abort();
  }, [made, also]);
  return drafts;
}
