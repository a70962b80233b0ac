import type { Body, Flag, Taught } from '../../../body';
import type { ToyWatched } from '../../../storage';
import { bodyOf } from './body-of';

/**
 * The body by the readings that nothing speaks against: what is guessed or suggested is built on these alone. Null where
 * nothing is doubted.
 */
export function believedOf(
  { toy, readings }: Pick<ToyWatched, 'toy' | 'readings'>,
  flags: readonly Flag[],
  taught?: Taught,
): Body | null {
  const doubted = new Set<string>(flags.flatMap(blamed));
  if (doubted.size === 0) return null;
  const rest = Object.fromEntries(Object.entries(readings).filter(([id]) => !doubted.has(id)));
  return bodyOf({ toy, readings: rest }, taught);
}

/** Of a doubt the reading most likely wrong; both of two that were swapped. */
const blamed = ({ severity, measures, values }: Flag) =>
  severity === 'note' ? [] : 'otherOffer' in values ? measures : measures.slice(0, 1);

/** A body with its readings as they are, the rest as `believed` has it. */
export function guessedFrom(believed: Body, read: Body): Body {
  if (believed === read) return read;
  const taken = Object.entries(read.sizes).filter(([, { from }]) => from === 'tape' || from === 'photo');
  return { ...read, sizes: { ...believed.sizes, ...Object.fromEntries(taken) } };
}
