import type { Card } from '../../body';

/** What a maker may leave out of a card; its name, kind of body and day always go along. */
export const optionalParts = ['readings', 'traits', 'corrections', 'orders', 'note', 'photo'] as const;
export type Part = (typeof optionalParts)[number];

/** Readings of one measure that a card can hold; the first ones taken are sent. */
const MOST_READINGS = 5;

/** The optional parts that a card has anything in. */
export function partsIn(card: Card): readonly Part[] {
  const has: Record<Part, boolean> = {
    readings: Object.keys(card.readings).length > 0,
    traits: Object.keys(card.toy.traits).length > 0,
    corrections: Object.keys(card.corrections ?? {}).length > 0,
    orders: (card.orders ?? []).length > 0,
    note: card.note !== '',
    photo: card.photo !== undefined,
  };
  return optionalParts.filter((part) => has[part]);
}

/** The card with these parts only. */
export function cardWith(card: Card, parts: ReadonlySet<Part>): Card {
  const { corrections, orders, photo } = card;
  return {
    format: card.format,
    version: card.version,
    toy: { ...card.toy, traits: parts.has('traits') ? card.toy.traits : {} },
    unit: card.unit,
    taken: card.taken,
    note: parts.has('note') ? card.note : '',
    readings: parts.has('readings') ? firstReadings(card.readings) : {},
    ...(corrections && parts.has('corrections') && { corrections }),
    ...(orders && parts.has('orders') && { orders }),
    ...(photo && parts.has('photo') && { photo }),
  };
}

const firstReadings = (readings: Card['readings']): Card['readings'] =>
  Object.fromEntries(Object.entries(readings).map(([id, taken]) => [id, taken.slice(0, MOST_READINGS)]));
