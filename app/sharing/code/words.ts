import { type BitReader, type BitWriter, Damaged, readBits, writeBits } from './bits';
import { readWhole, writeWhole } from './whole-numbers';

/**
 * A piece of text: 2 bits say how it is written. 0: letters of ALPHABET, 6 bits each, after their count; 1: UTF-8
 * bytes after their count; 2: the number of a FROZEN_WORD; 3 is not used. Counts and numbers are whole numbers of order 2.
 */
export function writeText(writer: BitWriter, text: string): void {
  const word = FROZEN_WORDS.indexOf(text);
  const letters = [...text].map((letter) => ALPHABET.indexOf(letter));
  if (word >= 0) {
    writeBits(writer, 2, 2);
    writeWhole(writer, word, 2);
  } else if (!letters.includes(-1)) {
    writeBits(writer, 0, 2);
    writeAll(writer, letters, 6);
  } else {
    writeBits(writer, 1, 2);
    writeAll(writer, [...new TextEncoder().encode(text)], 8);
  }
}

export function readText(reader: BitReader): string {
  const way = readBits(reader, 2);
  if (way === 0)
    return readAll(reader, 6)
      .map((letter) => ALPHABET.charAt(letter))
      .join('');
  if (way === 1) return utf8.decode(Uint8Array.from(readAll(reader, 8)));
  const word = way === 2 ? FROZEN_WORDS[readWhole(reader, 2)] : undefined;
  if (word === undefined) throw new Damaged();
  return word;
}

function writeAll(writer: BitWriter, symbols: readonly number[], width: number): void {
  writeWhole(writer, symbols.length, 2);
  for (const symbol of symbols) writeBits(writer, symbol, width);
}

function readAll(reader: BitReader, width: number): number[] {
  const count = readWhole(reader, 2);
  if (count * width > reader.bytes.length * 8 - reader.at) throw new Damaged();
  return Array.from({ length: count }, () => readBits(reader, width));
}

const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** Sixty-four letters, in the order of their codes. Never changes. */
const ALPHABET = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 -';

/** Words of version 1 of the code that cost a few bits instead of a spelling. Never changes. */
const FROZEN_WORDS = [
  'garment',
  'choices',
  'fit',
  'cloth',
  'allowances',
  'paper',
  'date',
  'corrections',
  'orders',
  'note',
];
