/** The beginnings of picture files that claim a size; no picture follows. What a small file can pretend. */

/** One kind of file, its type, and the bytes with which it claims a width and a height. */
export type Claim = {
  readonly type: 'image/png' | 'image/jpeg' | 'image/gif' | 'image/webp' | 'image/avif';
  readonly of: (width: number, height: number) => Uint8Array<ArrayBuffer>;
};

export const claims = {
  /** ISO/IEC 15948, section 11.2.2. */
  png: {
    type: 'image/png',
    of: (w, h) => bytes(hex('89504e470d0a1a0a0000000d'), 'IHDR', big(4, w), big(4, h), hex('0802000000')),
  },
  /** ITU-T T.81, B.2.2: a baseline frame header of three components. */
  jpeg: {
    type: 'image/jpeg',
    of: (w, h) => bytes(hex('ffd8ffc0001108'), big(2, h), big(2, w), hex('03011100021100031100')),
  },
  /** Behind 300 kB of what a camera wrote before it, as large as segments go. */
  'camera jpeg': {
    type: 'image/jpeg',
    of: (w, h) => {
      const segment = bytes(hex('ffe1ffff'), new Uint8Array(0xfffd));
      return bytes(
        hex('ffd8'),
        segment,
        segment,
        segment,
        segment,
        segment,
        hex('ffffc2001108'),
        big(2, h),
        big(2, w),
        hex('03'),
      );
    },
  },
  gif: {
    type: 'image/gif',
    of: (w, h) =>
      bytes('GIF89a', little(2, w), little(2, h), hex('0000002c00000000'), little(2, 1), little(2, 1), hex('00')),
  },
  /** A small screen, and a first picture that is not. */
  'gif within': {
    type: 'image/gif',
    of: (w, h) =>
      bytes('GIF89a', hex('0100010000000021f90400000000002c00000000'), little(2, w), little(2, h), hex('00')),
  },
  /** RFC 9649: lossy, lossless, and a canvas. */
  'lossy webp': {
    type: 'image/webp',
    of: (w, h) =>
      bytes('RIFF', hex('ffffff00'), 'WEBPVP8 ', hex('ffff0000000000'), hex('9d012a'), little(2, w), little(2, h)),
  },
  'lossless webp': {
    type: 'image/webp',
    of: (w, h) =>
      bytes('RIFF', hex('ffffff00'), 'WEBPVP8L', hex('ffff00002f'), little(4, (w - 1) | ((h - 1) << 14)), hex('0000')),
  },
  'canvas webp': {
    type: 'image/webp',
    of: (w, h) =>
      bytes('RIFF', hex('ffffff00'), 'WEBPVP8X', hex('0a00000000000000'), little(3, w - 1), little(3, h - 1)),
  },
  /** ISO/IEC 23008-12: a tile's size first, then that of the whole. */
  avif: {
    type: 'image/avif',
    of: (w, h) => {
      const ispe = (width: number, height: number) => box('ispe', new Uint8Array(4), big(4, width), big(4, height));
      const properties = box('iprp', box('ipco', ispe(1, 1), ispe(w, h)));
      return bytes(box('ftyp', 'avif', new Uint8Array(4), 'avif', 'mif1'), box('meta', new Uint8Array(4), properties));
    },
  },
} satisfies Readonly<Record<string, Claim>>;

const box = (name: string, ...inside: Piece[]) => {
  const content = bytes(name, ...inside);
  return bytes(big(4, content.length + 4), content);
};

type Piece = string | Uint8Array;

function bytes(...pieces: Piece[]): Uint8Array<ArrayBuffer> {
  const parts = pieces.map((piece) => (typeof piece === 'string' ? new TextEncoder().encode(piece) : piece));
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

const hex = (digits: string) => Uint8Array.from(digits.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
const little = (count: number, value: number) =>
  Uint8Array.from({ length: count }, (_, place) => Math.floor(value / 256 ** place) & 255);
const big = (count: number, value: number) => little(count, value).reverse();

/** A picture of some hundred million pixels in a few bytes, as whatever it claims to be; WebP has only 14 bits a side. */
export const hugeClaims = Object.entries(claims).map(([name, { type, of }]) => {
  const side = type === 'image/webp' ? 16_383 : 20_000;
  return { name, type, bytes: of(side, side) };
});
