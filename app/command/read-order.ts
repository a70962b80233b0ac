import * as v from 'valibot';
import { type Card, characters, cleanLine, NAME_CHARACTERS, type Order } from '../body';
import { checkCard } from '../sharing';
import { readFile } from './read-file';
import { parsed } from './unreadable';

/** Where a file cannot be read as an order: a stable code and the place in it. */
export type OrderFileFault = { readonly code: string; readonly where: string };
export type OrderFile =
  | { readonly ok: true; readonly card: Card; readonly order: Order }
  | { readonly ok: false; readonly fault: OrderFileFault };

/** A card is at most 64 KiB, an order little more. */
const LARGEST_BYTES = 1024 * 1024;

const CALENDAR_DATE = v.pipe(v.string(), v.isoDate());
const OWN_NAME = v.pipe(
  v.string(),
  v.minLength(1),
  v.check((name) => cleanLine(name) === name && characters(name) <= NAME_CHARACTERS),
);
const ORDER = v.object({
  garment: v.string(),
  choices: v.optional(v.record(v.string(), v.union([v.string(), v.boolean(), v.number()]))),
  fit: v.optional(v.string()),
  cloth: v.optional(v.string()),
  over: v.optional(v.string()),
  ownCloth: v.optional(v.object({ name: OWN_NAME, stretch: v.number(), thickness: v.number() })),
  allowances: v.optional(v.record(v.string(), v.number())),
  paper: v.optional(v.string()),
  date: v.optional(CALENDAR_DATE),
});

/** Reads an order file: a card and a garment, the rest optional. Never throws. */
export function readOrder(path: string): OrderFile {
  const file = readFile(path, LARGEST_BYTES);
  if (!file.ok) return fault(file.code, path);
  const json = parsed(file.text);
  if (json === undefined) return fault('not-json', path);
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return fault('not-an-order', path);
  const card = checkCard('card' in json ? json.card : undefined);
  if (!card.ok) return fault(card.fault.code, ['card', card.fault.where].filter(Boolean).join('.'));
  const order = v.safeParse(ORDER, json);
  if (!order.success) return fault('bad-order', v.getDotPath(order.issues[0]) ?? 'order');
  const { garment, ...rest } = order.output;
  const given = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
  return { ok: true, card: card.card, order: { garment, ...given } };
}

function fault(code: string, where: string): OrderFile {
  return { ok: false, fault: { code, where } };
}
