import type { Card } from '../../body';
import { toBase64Url } from './base64url';
import { type BitWriter, bytesOf, writeBits } from './bits';
import { checksum } from './checksum';
import { writeReadings } from './readings';
import { writeToy } from './toy';
import { type Value, writeValue } from './values';

/**
 * A card as the fragment of a link: `#1` and a code of letters, digits, `-` and `_`. Every bit of version 1, in order;
 * W(k) is a whole number of order k, S(k) a signed one, T a text, V a value (`whole-numbers.ts`, `words.ts`, `values.ts`):
 *
 * | bits  | field                                                                                              |
 * | ----- | -------------------------------------------------------------------------------------------------- |
 * | 3     | body kind, its place in `frozenBodies`                                                             |
 * | 2     | unit, its place in `frozenUnits`                                                                   |
 * | S(9)  | day the readings were taken, from 2026-01-01                                                       |
 * | 4     | n, how many traits follow                                                                          |
 * | 3 · n | each trait of `frozenTraits` in turn: 0 not said, else 1 + the place of its value                  |
 * | T     | name                                                                                               |
 * | 3     | grid: lengths in steps of 0: 1/2 mm, 1: 1/64 in, 2: 1 mm, 3: 1/16 in, 4: 1/10 mm                   |
 * | W(4)  | m, how many measures of `frozenMeasures` are covered                                               |
 * | 3 + 4 | size e, f: lengths are foretold as g = round(typical · (16 + f) · 2^e / 256 / step)                |
 * | 3     | c, closeness to what is foretold                                                                   |
 * | 3     | r, repeat                                                                                          |
 * | …     | for each of the m measures: 0, or 1 and its readings: the first as S(max(0, bits of g − c)) from   |
 * |       | g, then 1 and S(r) from the first for each further one, then 0 unless there are five               |
 * | 1     | 1 if a V follows: an object that may hold `corrections`, `orders` and `note` as the card does      |
 * | 0–7   | zeros up to a whole byte                                                                           |
 * | 24    | checksum of the digit `1` (as one byte, 0x31) and all bytes before                                 |
 *
 * The bytes are written as base64url. In a QR they ride in byte mode, the only one that holds both the address and
 * the code: 171 letters here and an address of 40 fill version 10 at level M (213 bytes, ISO/IEC 18004 table 7).
 *
 * A photo is always left out; a note where the code would grow over `room` letters; orders where it would not fit
 * a QR of version 20. What was left out is named.
 */
export function encodeCard(card: Card, room = CODE_ROOM): EncodedCard {
  const { note, orders, corrections } = card;
  const photo = card.photo === undefined ? [] : ['photo'];
  const corrected = corrections ? { corrections } : {};
  const ordered = orders ? { ...corrected, orders } : corrected;
  const whole = codeOf(card, note ? { ...ordered, note } : ordered);
  if (!note || whole.length <= room) {
    if (!orders || whole.length <= ORDERS_ROOM) return { fragment: `#1${whole}`, leftOut: photo };
    return { fragment: `#1${codeOf(card, corrected)}`, leftOut: ['orders', ...photo] };
  }
  const { fragment, leftOut } = encodeCard({ ...card, note: '' }, room);
  return { fragment, leftOut: [...leftOut.filter((part) => part === 'orders'), 'note', ...photo] };
}

export type EncodedCard = { readonly fragment: string; readonly leftOut: readonly string[] };

function codeOf(card: Card, rest: Record<string, Value>): string {
  const writer: BitWriter = { bits: [] };
  writeToy(writer, card);
  writeReadings(writer, card.readings);
  writeBits(writer, Object.keys(rest).length > 0 ? 1 : 0, 1);
  if (Object.keys(rest).length > 0) writeValue(writer, rest);
  const content = bytesOf(writer);
  const sum = checksum(Uint8Array.of(VERSION_DIGIT, ...content));
  return toBase64Url(Uint8Array.of(...content, sum >> 16, (sum >> 8) & 255, sum & 255));
}

/** The letter `1`, which stands before the code and is guarded by its checksum too. */
export const VERSION_DIGIT = 0x31;
/** Letters of code beside `#1` and an address of 40 in a QR of version 10 at level M. */
const CODE_ROOM = 171;
/** The same for version 20, with 666 bytes: still read from a picture that fills a phone's screen. */
const ORDERS_ROOM = 624;
