import { encodeQR } from 'qr';

/** A QR symbol: `dark[row][column]`, `size` modules a side, without the quiet zone it must be drawn in. */
export type QrSymbol = {
  readonly version: number;
  readonly size: number;
  readonly dark: readonly (readonly boolean[])[];
};

/** Modules of white that ISO/IEC 18004 (section 6.3.8) asks for on every side. */
export const QUIET_MODULES = 4;

/** The smallest symbol of ISO/IEC 18004 that holds a text at error correction level M (about 15 % may be lost). */
export function qrOf(text: string): QrSymbol {
  // The library draws no symbol without a border; what it is put in has its own.
  const bordered = encodeQR(text, 'raw', { ecc: 'medium', border: 1 });
  const dark = bordered.slice(1, -1).map((row) => row.slice(1, -1));
  return { version: (dark.length - 17) / 4, size: dark.length, dark };
}
