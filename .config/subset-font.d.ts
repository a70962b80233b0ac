/** What we use of subset-font, which has no types of its own. */
declare module 'subset-font' {
  type Options = {
    readonly targetFormat: 'sfnt';
    readonly noHinting: boolean;
    readonly keepFeatures: readonly string[];
    readonly dropTables: readonly string[];
  };
  export default function subsetFont(font: Uint8Array, letters: string, options: Options): Promise<Uint8Array>;
}
