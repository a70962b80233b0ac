import { type Body, findMeasure, type MeasureId, type Mm, type Taught, typicalKnowns } from '../../../body';
import { bodyFrom } from '../../../measuring';
import type { ReadingsByMeasure, ToyWatched } from '../../../storage';

/** The body of a toy as far as it is measured; `taught` by the maker's others, where they may teach. */
export function bodyOf({ toy, readings }: Pick<ToyWatched, 'toy' | 'readings'>, taught?: Taught): Body {
  return bodyFrom({
    toy: { body: toy?.kind ?? 'upright', traits: toy?.traits ?? {} },
    readings: lengthsOf(readings),
    corrections: toy?.corrections ?? {},
    fromPhoto: photoGives(readings),
    taught,
  });
}

/**
 * The body to show clothes on. Before its first number that is the likely one of its kind and build, as if it were
 * measured: a picture to choose by, never a pattern.
 */
export function bodyShown(body: Body): Body {
  if (Object.values(body.sizes).some((known) => known && known.from !== 'estimate')) return body;
  const girth = body.kind === 'round' ? 'body-girth' : 'chest-girth';
  const usual = typicalKnowns(body.traits.build)[girth]?.value ?? findMeasure(girth)?.typical[body.kind] ?? 0;
  const likely = bodyFrom({ toy: { body: body.kind, traits: body.traits }, readings: { [girth]: [usual] } });
  const sizes = Object.entries(likely.sizes).map(([id, known]) => [id, { ...known, from: 'tape', give: 0 }]);
  return { ...likely, sizes: Object.fromEntries(sizes) };
}

/**
 * A length read off a photo may be this share of itself off, at least this much: what the photo screen states of a mark
 * set by its loupe at the edge of its reach. The statement itself is not kept with the reading.
 */
const PHOTO_GIVE_SHARE = 0.03;
const LEAST_PHOTO_GIVE_MM = 2;

/** Measures with a reading off a photo among those that count, and how far off each may be, mm. */
function photoGives(readings: ReadingsByMeasure): { readonly [M in MeasureId]?: Mm } {
  return Object.fromEntries(
    Object.entries(readings).flatMap(([id, taken]) => {
      const longest = Math.max(...taken.filter(({ from }) => from === 'photo').map(({ mm }) => mm));
      return longest > 0 ? [[id, Math.max(LEAST_PHOTO_GIVE_MM, longest * PHOTO_GIVE_SHARE)]] : [];
    }),
  );
}

/** The readings that count as plain lengths, mm, in the order taken. */
export function lengthsOf(readings: ReadingsByMeasure): { readonly [M in MeasureId]?: readonly Mm[] } {
  return Object.fromEntries(Object.entries(readings).map(([id, taken]) => [id, taken.map((reading) => reading.mm)]));
}
