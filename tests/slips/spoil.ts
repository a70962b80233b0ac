import { type Card, findMeasure, LONGEST_MM, type MeasureId, MM_PER_INCH, type Mm, SHORTEST_MM } from '../../app/body';
import type { Random } from '../toys/seeded';

/** A card with one reading spoiled (two, where they were swapped), by what factor, and what it was. */
export type Spoiled = {
  readonly card: Card;
  readonly measures: readonly MeasureId[];
  readonly factor: number;
  readonly was: readonly Mm[];
};

type Spoil = (value: Mm, card: Card, id: MeasureId, random: Random) => Mm | null;

/** What people do to a number; each gives the spoiled length in mm, or null where it cannot happen to this one. */
const mistypings = {
  'inch for cm': (value) => (value * 10) / MM_PER_INCH,
  'cm for inch': (value) => (value * MM_PER_INCH) / 10,
  tenfold: (value) => value * 10,
  'a tenth': (value) => value / 10,
  'digit doubled': doubled,
  'fraction dropped': (value, card) => {
    const unit = unitOf(card);
    const whole = Math.floor(value / unit + 1e-6);
    return whole > 0 && value / unit - whole > 0.05 ? whole * unit : null;
  },
  'half for whole': (value, _, id) => (isGirth(id) ? value / 2 : null),
  'whole for half': (value, _, id) => (isGirth(id) ? null : value * 2),
  'tape end': (value, card) => (card.unit === 'in' ? 60 * MM_PER_INCH : 1500) - value,
} as const satisfies Record<string, Spoil>;

export const slipKinds = [...(Object.keys(mistypings) as (keyof typeof mistypings)[]), 'swapped'] as const;
export type SlipKind = (typeof slipKinds)[number];

const unitOf = (card: Card) => (card.unit === 'in' ? MM_PER_INCH : 10);
const isGirth = (id: MeasureId) => findMeasure(id)?.nature === 'girth';

/** Spoils one reading of a card, taken at random; null where this slip cannot happen to it or leaves it as it was. */
export function spoil(card: Card, kind: SlipKind, random: Random): Spoiled | null {
  const ids = Object.keys(card.readings) as MeasureId[];
  const [id, other] = [pick(ids, random), pick(ids, random)];
  const [value, otherValue] = [id && card.readings[id]?.[0], other && card.readings[other]?.[0]];
  if (!id || !other || value === undefined || otherValue === undefined) return null;
  if (kind === 'swapped') return swap(card, [id, value], [other, otherValue]);
  const how: Spoil = mistypings[kind];
  const wrong = how(value, card, id, random);
  if (wrong === null || wrong < SHORTEST_MM || wrong > LONGEST_MM) return null;
  return { card: withReadings(card, { [id]: [wrong] }), measures: [id], factor: factorOf(value, wrong), was: [value] };
}

function swap(card: Card, [id, value]: [MeasureId, Mm], [other, otherValue]: [MeasureId, Mm]): Spoiled | null {
  if (id === other || value === otherValue) return null;
  const readings = { [id]: [otherValue], [other]: [value] };
  const was = [value, otherValue];
  return { card: withReadings(card, readings), measures: [id, other], factor: factorOf(value, otherValue), was };
}

/** The number as written in its unit, to a tenth or a quarter, with one of its whole digits typed twice. */
function doubled(value: Mm, card: Card, _: MeasureId, random: Random): Mm | null {
  const unit = unitOf(card);
  const written = String(Math.round((value / unit) * 100) / 100);
  const digits = written.split('.')[0]?.length ?? 0;
  const at = Math.floor(random() * digits);
  return Number(written.slice(0, at + 1) + written.slice(at)) * unit;
}

const withReadings = (card: Card, readings: Card['readings']): Card => ({
  ...card,
  readings: { ...card.readings, ...readings },
});

const factorOf = (value: Mm, wrong: Mm) => Math.max(value / wrong, wrong / value);
const pick = <T>(list: readonly T[], random: Random): T | undefined => list[Math.floor(random() * list.length)];
