import type { Body, MeasureId, Mm } from '../body';
import { bodyFrom } from '../measuring';
import type { ReadingsByMeasure, ToyWatched } from '../storage';

/** The body of a toy as far as it is measured. */
export function bodyOf({ toy, readings }: Pick<ToyWatched, 'toy' | 'readings'>): Body {
  return bodyFrom({
    toy: { body: toy?.kind ?? 'upright', traits: toy?.traits ?? {} },
    readings: lengthsOf(readings),
    corrections: toy?.corrections ?? {},
  });
}

/** The readings that count as plain lengths, mm, in the order taken. */
export function lengthsOf(readings: ReadingsByMeasure): { readonly [M in MeasureId]?: readonly Mm[] } {
  return Object.fromEntries(Object.entries(readings).map(([id, taken]) => [id, taken.map((reading) => reading.mm)]));
}
