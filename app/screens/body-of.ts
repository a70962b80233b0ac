import type { Body } from '../body';
import { bodyFrom } from '../measuring';
import type { ToyWatched } from '../storage';

/** The body of a toy as far as it is measured. */
export function bodyOf({ toy, readings }: Pick<ToyWatched, 'toy' | 'readings'>): Body {
  const lists = Object.entries(readings).map(([id, taken]) => [id, taken.map((reading) => reading.mm)]);
  return bodyFrom({
    toy: { body: toy?.kind ?? 'upright', traits: toy?.traits ?? {} },
    readings: Object.fromEntries(lists),
    corrections: toy?.corrections ?? {},
  });
}
