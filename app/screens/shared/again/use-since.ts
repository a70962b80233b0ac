import { useMemo } from 'preact/hooks';
import type { Draft } from '../../../drafting/draft-types';
import { useWords } from '../../../parts';
import { writtenDay } from '../../../words';
import type { Making } from '../making/making';
import { madeOf } from './made';
import { type Since, since } from './since';

/** What a draft has become since the garment was last put on paper, or beside the one it is made again from. */
export type Compared = {
  readonly since: Since;
  /** The day, or whose it was. */
  readonly before: string;
  readonly anothers: boolean;
};

/** Null where there is nothing to compare with. */
export function useSince(draft: Draft | null, making: Making): Compared | null {
  const { hand } = useWords();
  const { garment, toy, row } = making;
  const earlier = garment.made ?? garment.like;
  return useMemo(() => {
    if (!draft || !earlier) return null;
    const anothers = !garment.made && earlier.toyId !== toy.id;
    const day = writtenDay(earlier.at, hand.locale);
    const now = madeOf(draft, making, earlier.at);
    return { since: since(earlier, now, row, !anothers), before: anothers ? earlier.toy : day, anothers };
  }, [draft, earlier, making, hand.locale]);
}
