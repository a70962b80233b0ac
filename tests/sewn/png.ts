import { crc32, deflateSync } from 'node:zlib';

/** A PNG (RFC 2083) of `wide` × `high` pixels, three bytes each, row by row. */
export function png(wide: number, high: number, pixels: Uint8Array): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(wide, 0);
  head.writeUInt32BE(high, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const rows = Buffer.alloc(high * (3 * wide + 1));
  for (let y = 0; y < high; y++) rows.set(pixels.subarray(3 * wide * y, 3 * wide * (y + 1)), y * (3 * wide + 1) + 1);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [long, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  long.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([long, named, sum]);
}
