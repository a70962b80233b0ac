/** Bits in the order written, most significant first; the last byte is filled up with zeros. */
export type BitWriter = { readonly bits: number[] };
/** Bits being read: `at` is the next one. */
export type BitReader = { readonly bytes: Uint8Array; at: number };

/** Thrown inside the code's reader only, and caught at its door: the code ends too early or says what cannot be. */
export class Damaged extends Error {}

export function writeBits(writer: BitWriter, value: number, width: number): void {
  for (let place = width - 1; place >= 0; place--) writer.bits.push(Math.floor(value / 2 ** place) % 2);
}

export function readBits(reader: BitReader, width: number): number {
  let value = 0;
  for (let count = 0; count < width; count++) value = value * 2 + readBit(reader);
  return value;
}

function readBit(reader: BitReader): number {
  const byte = reader.bytes[reader.at >> 3];
  if (byte === undefined) throw new Damaged();
  return (byte >> (7 - (reader.at++ & 7))) & 1;
}

export function bytesOf(writer: BitWriter): Uint8Array {
  const bytes = new Uint8Array(Math.ceil(writer.bits.length / 8));
  writer.bits.forEach((bit, at) => {
    bytes[at >> 3] = (bytes[at >> 3] ?? 0) | (bit << (7 - (at & 7)));
  });
  return bytes;
}

/** A code has one spelling only: what follows the last field is less than a byte, and all zeros. */
export function expectEnd(reader: BitReader): void {
  const rest = reader.bytes.length * 8 - reader.at;
  if (rest >= 8 || readBits(reader, rest) !== 0) throw new Damaged();
}
