import {
  type Body,
  type Card,
  estimates,
  findMeasure,
  type Known,
  type Knowns,
  type MeasureId,
  type Mm,
  type Taught,
  usualTraits,
} from '../body';
import { followsFrom } from './follows';
import { settle } from './settle';

/** A tape over fur strays by about this share of the length, and never by less than this (common practice, no source). */
const TAPE_GIVE_SHARE = 0.024;
const TAPE_GIVE_MM = 1;

type Told = Pick<Card, 'readings' | 'corrections'> & {
  readonly toy: Pick<Card['toy'], 'body' | 'traits'>;
  /** Measures read off a photograph, and the give stated there, mm. */
  readonly fromPhoto?: { readonly [M in MeasureId]?: Mm };
  /** What the maker's other toys say of this one; never part of a card. */
  readonly taught?: Taught | undefined;
};

/**
 * The body a card tells of: its readings settled, what follows exactly from them worked out, and every other measure
 * of that body kind estimated from the proportions of the kind, with its give. Nothing is refused here; the rules say
 * what cannot be.
 */
export function bodyFrom(card: Told): Body {
  const { body: kind, traits } = card.toy;
  const taken: Knowns = Object.fromEntries(
    Object.entries(card.readings).flatMap(([id, readings]) => {
      const measure = findMeasure(id);
      const known = measure?.typical[kind] ? knownFrom(readings ?? [], card.fromPhoto?.[measure.id]) : null;
      return known ? [[id, known]] : [];
    }),
  );
  const told: Knowns = { ...followsFrom(taken), ...taken };
  const wearer = {
    kind,
    traits: { ...usualTraits, ...traits },
    sizes: told,
    ...(card.taught && { taught: card.taught }),
  };
  return { ...wearer, sizes: { ...estimates(wearer), ...told }, corrections: card.corrections ?? {} };
}

/** What readings of one measure amount to; `photo` is the give of those read off a photograph. Null without any. */
function knownFrom(readings: readonly Mm[], photo: Mm | undefined): Known | null {
  const settled = settle(readings);
  if (!settled) return null;
  const hand = Math.max(TAPE_GIVE_MM, TAPE_GIVE_SHARE * Math.abs(settled.value)) / Math.sqrt(readings.length);
  const give = Math.max(hand, settled.spread / 2, photo ?? 0);
  return { value: settled.value, from: photo === undefined ? 'tape' : 'photo', give };
}
