import { type InferOutput, safeParse } from 'valibot';
import { type Card, cleanLine, findMeasure, type Mm, type SizeId, sizeIds, type Traits, traitValues } from '../body';
import { cardShape, correctionShape, readingsShape } from './card-schema';
import { faultFromIssue, faultOf, type Refusal } from './fault';
import { CARD_BYTES, SKIPPED_CHARACTERS, SKIPPED_LISTED } from './limits';

/** A card that may be trusted, with the names of what was skipped in it; or why it cannot be read. */
export type CardResult =
  | {
      readonly ok: true;
      readonly card: Card;
      readonly skipped: readonly string[];
    }
  | Refusal;

/**
 * Reads a card from its JSON text. Never throws, whatever the text. Unknown keys are dropped; measures, trait values
 * and corrections this version does not know are skipped and listed (`skipped`), so that cards outlive the catalogue.
 * Names and notes are cleaned of control characters and bidi overrides, not refused for them; too long is refused.
 * An empty name is allowed. Faults: `too-large`, `not-json`, `not-a-card`, `newer-version`, `unknown-version`,
 * `unknown-body`, `unknown-unit`, `bad-date`, `bad-photo`, `not-a-number`, `length-out-of-range`, `too-many`,
 * `too-long`, `empty`, `bad-text`, `bad-choice`, `not-text`, `not-a-list`, `not-an-object`, `missing`.
 */
export function readCard(text: string): CardResult {
  if (typeof text !== 'string') return faultOf('not-json');
  if (text.length > CARD_BYTES || new TextEncoder().encode(text).length > CARD_BYTES) {
    return faultOf('too-large', '', { bytes: text.length, limit: CARD_BYTES });
  }
  try {
    return checkCard(JSON.parse(text.replace(/^\uFEFF/u, '')));
  } catch {
    return faultOf('not-json');
  }
}

/** The same for a card that is already a value, such as the one inside an order file or a decoded code. */
export function checkCard(value: unknown): CardResult {
  const other = foreign(value);
  if (other) return other;
  const shape = safeParse(cardShape, value, { abortEarly: true });
  if (!shape.success) return faultFromIssue(shape.issues[0], '');
  const skipped: string[] = [];
  const readings: Record<string, readonly Mm[]> = {};
  for (const [id, taken] of Object.entries(shape.output.readings)) {
    if (!findMeasure(id)) {
      skipped.push(id);
      continue;
    }
    const each = safeParse(readingsShape, taken, { abortEarly: true });
    if (!each.success) return faultFromIssue(each.issues[0], `readings.${id}`);
    if (each.output.length > 0) readings[id] = each.output;
  }
  const corrections = readCorrections(shape.output.corrections ?? {}, skipped);
  if ('fault' in corrections) return corrections;
  const traits = readTraits(shape.output.toy.traits, skipped);
  return {
    ok: true,
    card: assemble(shape.output, traits, readings, corrections.sizes),
    skipped: listed(skipped),
  };
}

type Shape = InferOutput<typeof cardShape>;
type Corrections = NonNullable<Card['corrections']>;

/** Keys in the order a card is written in, so that the same card always gives the same text. */
function assemble(shape: Shape, traits: Partial<Traits>, readings: Card['readings'], corrections: Corrections): Card {
  return {
    format: shape.format,
    version: shape.version,
    toy: { name: shape.toy.name, body: shape.toy.body, traits },
    unit: shape.unit,
    taken: shape.taken,
    note: shape.note,
    readings,
    ...(Object.keys(corrections).length > 0 && { corrections }),
    ...(shape.orders && shape.orders.length > 0 && { orders: shape.orders }),
    ...(shape.photo !== undefined && { photo: shape.photo }),
  };
}

/** Another app's file and a newer card are known by their first two keys, before anything else is believed. */
function foreign(value: unknown): Refusal | null {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== 'hemling-card') {
    return faultOf('not-a-card');
  }
  if (!('version' in value) || typeof value.version !== 'number' || !(value.version > 1)) return null;
  return faultOf('newer-version', 'version', { version: value.version, known: 1 });
}

function readTraits(given: Record<string, unknown>, skipped: string[]): Partial<Traits> {
  const known = Object.entries(traitValues).flatMap(([trait, values]) => {
    const value = values.find((each) => each === given[trait]);
    if (value === undefined && given[trait] !== undefined) skipped.push(`traits.${trait}`);
    return value === undefined ? [] : [[trait, value]];
  });
  return Object.fromEntries(known);
}

function readCorrections(given: Record<string, unknown>, skipped: string[]): { sizes: Corrections } | Refusal {
  const sizes: { [S in SizeId]?: Mm } = {};
  for (const [id, amount] of Object.entries(given)) {
    const size = sizeIds.find((each) => each === id);
    if (!size) {
      skipped.push(`corrections.${id}`);
      continue;
    }
    const read = safeParse(correctionShape, amount, { abortEarly: true });
    if (!read.success) return faultFromIssue(read.issues[0], `corrections.${id}`);
    sizes[size] = read.output;
  }
  return { sizes };
}

const listed = (skipped: readonly string[]) =>
  skipped
    .slice(0, SKIPPED_LISTED)
    .map((name) => [...cleanLine(name.slice(0, 400))].slice(0, SKIPPED_CHARACTERS).join(''));
