import { faultOf } from '../fault';
import { type CardResult, checkCard } from '../read-card';
import { fromBase64Url } from './base64url';
import { type BitReader, Damaged, expectEnd, readBits } from './bits';
import { checksum } from './checksum';
import { VERSION_DIGIT } from './encode';
import { readReadings } from './readings';
import { readToy } from './toy';
import { readValue } from './values';

/**
 * Reads a card from a link, or its fragment alone; spaces and line breaks that mail put in do not matter. Never
 * throws, and judges the card as `readCard` does. Faults of its own: `not-a-code` (no `#` and digit in it),
 * `newer-version`, `damaged-code` (cut short, mistyped, or its checksum is wrong), `too-large`.
 */
export function decodeCode(text: string): CardResult {
  if (typeof text !== 'string') return faultOf('not-a-code');
  if (text.length > LONGEST_TEXT) return faultOf('too-large', '', { bytes: text.length, limit: LONGEST_TEXT });
  const found = /#(\d)([\w-]*)/u.exec(text.replace(/\s+/gu, ''));
  if (!found) return faultOf('not-a-code');
  const [, version = '', code = ''] = found;
  if (version !== '1') return faultOf('newer-version', 'version', { version: Number(version), known: 1 });
  const content = guarded(code);
  if (!content) return faultOf('damaged-code');
  const card = read({ bytes: content, at: 0 });
  return card ? checkCard(card) : faultOf('damaged-code');
}

/** The bytes before the checksum, if it is right. */
function guarded(code: string): Uint8Array | null {
  const bytes = fromBase64Url(code);
  if (!bytes || bytes.length < 4) return null;
  const content = bytes.subarray(0, -3);
  const [high = 0, middle = 0, low = 0] = bytes.subarray(-3);
  const sum = high * 65536 + middle * 256 + low;
  return checksum(Uint8Array.of(VERSION_DIGIT, ...content)) === sum ? content : null;
}

function read(reader: BitReader): unknown {
  try {
    const { toy, unit, taken } = readToy(reader);
    const readings = readReadings(reader);
    const rest = readBits(reader, 1) === 1 ? readValue(reader) : {};
    expectEnd(reader);
    if (typeof rest !== 'object') return null;
    // Nothing else rides in a link, a photo least of all: a few letters could claim a picture of any size.
    const { note = '', corrections, orders } = rest as Readonly<Record<string, unknown>>;
    const more = { ...(corrections !== undefined && { corrections }), ...(orders !== undefined && { orders }) };
    return { note, ...more, format: 'hemling-card', version: 1, toy, unit, taken, readings };
  } catch (error) {
    if (error instanceof Damaged || error instanceof TypeError || error instanceof RangeError) return null;
    throw error;
  }
}

/** Longer than any link we write: hundreds of readings and orders make about a thousand letters. */
const LONGEST_TEXT = 8192;
