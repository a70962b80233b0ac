// How wide letters are that the PDF library has in its standard fonts without knowing their width.

/** Thousandths of the size, plain and bold (Adobe, font metrics of the standard fonts: Helvetica, Helvetica-Bold). */
export const unknownWidths: Readonly<Record<string, { readonly plain: number; readonly bold: number }>> = {
  Œ: { plain: 1000, bold: 1000 },
  œ: { plain: 944, bold: 944 },
  Š: { plain: 667, bold: 667 },
  š: { plain: 500, bold: 556 },
  Ž: { plain: 611, bold: 611 },
  ž: { plain: 500, bold: 500 },
  '€': { plain: 556, bold: 556 },
};
