import { type BitReader, type BitWriter, Damaged, readBits, writeBits } from './bits';
import { readSigned, readWhole, writeSigned, writeWhole } from './whole-numbers';
import { readText, writeText } from './words';

/** What the open-ended parts of a card are made of. */
export type Value = string | boolean | number | readonly Value[] | { readonly [key: string]: Value };

/**
 * A value: 3 bits for its kind, then its content.
 * 0 text · 1 true · 2 false · 3 whole number (signed, order 4) · 4 thousandths (signed, order 10) ·
 * 5 list: count (order 0), values · 6 object: count (order 0), then key text and value of each · 7 IEEE 754 double, 64 bits.
 */
export function writeValue(writer: BitWriter, value: Value): void {
  if (typeof value === 'string') {
    writeBits(writer, 0, 3);
    writeText(writer, value);
  } else if (typeof value === 'boolean') writeBits(writer, value ? 1 : 2, 3);
  else if (typeof value === 'number') writeNumber(writer, value);
  else if (isList(value)) {
    writeBits(writer, 5, 3);
    writeWhole(writer, value.length, 0);
    for (const each of value) writeValue(writer, each);
  } else {
    const entries = Object.entries(value);
    writeBits(writer, 6, 3);
    writeWhole(writer, entries.length, 0);
    for (const [key, each] of entries) {
      writeText(writer, key);
      writeValue(writer, each);
    }
  }
}

export function readValue(reader: BitReader, depth = 0): Value {
  if (depth > DEEPEST) throw new Damaged();
  const kind = readBits(reader, 3);
  if (kind === 0) return readText(reader);
  if (kind === 1 || kind === 2) return kind === 1;
  if (kind === 3) return readSigned(reader, 4);
  if (kind === 4) return readSigned(reader, 10) / 1000;
  if (kind === 7) return readDouble(reader);
  const count = readWhole(reader, 0);
  if (count * 3 > reader.bytes.length * 8 - reader.at) throw new Damaged();
  if (kind === 5) return Array.from({ length: count }, () => readValue(reader, depth + 1));
  return Object.fromEntries(Array.from({ length: count }, () => [readText(reader), readValue(reader, depth + 1)]));
}

function writeNumber(writer: BitWriter, value: number): void {
  const thousandths = Math.round(value * 1000);
  if (Number.isInteger(value) && Math.abs(value) < LARGEST_WHOLE) {
    writeBits(writer, 3, 3);
    writeSigned(writer, value, 4);
  } else if (thousandths / 1000 === value && Math.abs(thousandths) < LARGEST_WHOLE) {
    writeBits(writer, 4, 3);
    writeSigned(writer, thousandths, 10);
  } else {
    const bytes = new DataView(new ArrayBuffer(8));
    bytes.setFloat64(0, value);
    writeBits(writer, 7, 3);
    writeBits(writer, bytes.getUint32(0), 32);
    writeBits(writer, bytes.getUint32(4), 32);
  }
}

function readDouble(reader: BitReader): number {
  const bytes = new DataView(new ArrayBuffer(8));
  bytes.setUint32(0, readBits(reader, 32));
  bytes.setUint32(4, readBits(reader, 32));
  return bytes.getFloat64(0);
}

const isList = (value: Value): value is readonly Value[] => Array.isArray(value);

/** A card's own parts nest four deep: rest, orders, order, choices. */
const DEEPEST = 6;
/** Larger whole numbers are written as doubles. */
const LARGEST_WHOLE = 2 ** 40;
