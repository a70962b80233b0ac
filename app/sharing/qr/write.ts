import { encode } from 'uqr';

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
  const { version, size, data } = encode(text, { ecc: 'M', boostEcc: false, border: 0 });
  return { version, size, dark: data };
}
