import { type Card, measureIds, sizeIds, traitValues } from '../body';

/**
 * The card as JSON: canonical (keys in a fixed order, measures in catalogue order, no spaces), so that the same card
 * is the same text on every device. Lengths are written exactly; `readCard` gives back an equal card.
 */
export function writeCard(card: Card): string {
  return JSON.stringify({
    format: card.format,
    version: card.version,
    toy: {
      name: card.toy.name,
      body: card.toy.body,
      traits: inOrder(card.toy.traits, Object.keys(traitValues)),
    },
    unit: card.unit,
    taken: card.taken,
    note: card.note,
    readings: inOrder(card.readings, measureIds),
    corrections: card.corrections && inOrder(card.corrections, sizeIds),
    orders: card.orders,
    photo: card.photo,
  });
}

const inOrder = (entries: Readonly<Record<string, unknown>>, keys: readonly string[]) =>
  Object.fromEntries(keys.filter((key) => entries[key] !== undefined).map((key) => [key, entries[key]]));
