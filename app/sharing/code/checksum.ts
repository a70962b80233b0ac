/**
 * CRC-24 as OpenPGP defines it (RFC 9580, section 6.1): 24 bits, generator 0x864CFB, start 0xB704CE. A code with up to
 * 24 neighbouring wrong bits never passes; any other damage does once in 16.7 million times.
 */
export function checksum(bytes: Uint8Array): number {
  let crc = START;
  for (const byte of bytes) {
    crc ^= byte << 16;
    for (let bit = 0; bit < 8; bit++) crc = (crc << 1) ^ (crc & 0x800000 ? GENERATOR : 0);
  }
  return crc & 0xffffff;
}

const START = 0xb704ce;
/** With its 25th bit, which clears the one shifted out. */
const GENERATOR = 0x1864cfb;
