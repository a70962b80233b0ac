/** What we use of fontkit: its own types ask for node's. */
declare module 'fontkit' {
  type Glyph = {
    readonly id: number;
    readonly codePoints: readonly number[];
    readonly advanceWidth: number;
  };
  type Position = { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number };
  type Subset = { includeGlyph(id: number): number; encode(): Uint8Array };
  type Box = { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number };

  export type Font = {
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly capHeight: number;
    readonly bbox: Box;
    getGlyph(id: number, codePoints?: readonly number[]): Glyph;
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(
      text: string,
      features: Readonly<Record<string, boolean>>,
      script: undefined,
      language: undefined,
      direction: 'ltr' | 'rtl',
    ): { readonly glyphs: readonly Glyph[]; readonly positions: readonly Position[] };
    createSubset(): Subset;
  };

  export function create(bytes: Uint8Array): Font;
}
