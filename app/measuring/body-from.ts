import {
  type Body,
  type Card,
  estimates,
  findMeasure,
  type Known,
  type Knowns,
  type Mm,
  type Origin,
  usualTraits,
} from '../body';
import { followsFrom } from './follows';
import { settle } from './settle';

/** A tape over fur strays by about this share of the length, and never by less than this (common practice, no source). */
const TAPE_GIVE_SHARE = 0.024;
const TAPE_GIVE_MM = 1;

type Told = Pick<Card, 'readings' | 'corrections'> & { readonly toy: Pick<Card['toy'], 'body' | 'traits'> };

/**
 * The body a card tells of: its readings settled, what follows exactly from them worked out, and every other measure
 * of that body kind estimated from the proportions of the kind, with its give. Nothing is refused here; the rules say
 * what cannot be.
 */
export function bodyFrom(card: Told): Body {
  const { body: kind, traits } = card.toy;
  const taken: Knowns = Object.fromEntries(
    Object.entries(card.readings).flatMap(([id, readings]) => {
      const known = findMeasure(id)?.typical[kind] ? knownFrom(readings ?? [], 'tape') : null;
      return known ? [[id, known]] : [];
    }),
  );
  const told: Knowns = { ...followsFrom(taken), ...taken };
  const wearer = { kind, traits: { ...usualTraits, ...traits }, sizes: told };
  return { ...wearer, sizes: { ...estimates(wearer), ...told }, corrections: card.corrections ?? {} };
}

/** What readings of one measure amount to; null without any. */
export function knownFrom(readings: readonly Mm[], from: Origin): Known | null {
  const settled = settle(readings);
  if (!settled) return null;
  const hand = Math.max(TAPE_GIVE_MM, TAPE_GIVE_SHARE * Math.abs(settled.value)) / Math.sqrt(readings.length);
  return { value: settled.value, from, give: Math.max(hand, settled.spread / 2) };
}
