import { type BitReader, type BitWriter, Damaged, readBits, writeBits } from './bits';

/**
 * Whole numbers of no fixed width: exponential Golomb codes of a given order (small orders favour small numbers), as
 * in ITU-T H.264 clause 9.1. With q = ⌊n / 2^order⌋ + 1 of b bits: b − 1 zeros, q in b bits, then the `order` low bits of n.
 */
export function writeWhole(writer: BitWriter, value: number, order: number): void {
  const head = Math.floor(value / 2 ** order) + 1;
  const width = bitLength(head);
  writeBits(writer, 0, width - 1);
  writeBits(writer, head, width);
  writeBits(writer, value % 2 ** order, order);
}

export function readWhole(reader: BitReader, order: number): number {
  let zeros = 0;
  while (readBits(reader, 1) === 0) if (++zeros > MOST_ZEROS) throw new Damaged();
  const head = 2 ** zeros + readBits(reader, zeros);
  return (head - 1) * 2 ** order + readBits(reader, order);
}

/** Numbers of either sign, zigzag: 0, −1, 1, −2, 2 … become 0, 1, 2, 3, 4 … */
export const writeSigned = (writer: BitWriter, value: number, order: number): void =>
  writeWhole(writer, value < 0 ? -2 * value - 1 : 2 * value, order);

export function readSigned(reader: BitReader, order: number): number {
  const zigzag = readWhole(reader, order);
  return zigzag % 2 === 0 ? zigzag / 2 : -(zigzag + 1) / 2;
}

/** How many bits `writeSigned` takes: for choosing the shortest way of writing before writing. */
export const signedWidth = (value: number, order: number): number =>
  2 * bitLength(Math.floor((value < 0 ? -2 * value - 1 : 2 * value) / 2 ** order) + 1) - 1 + order;

/** Bits needed to write a whole number below 2^53; 0 needs none. */
export const bitLength = (value: number): number =>
  value < 2 ** 32 ? 32 - Math.clz32(value) : 32 + bitLength(Math.floor(value / 2 ** 32));

/** Whole numbers are below 2^50 at order 0: more zeros than this are no number of ours. */
const MOST_ZEROS = 50;
