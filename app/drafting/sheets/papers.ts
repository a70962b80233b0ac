import { MM_PER_INCH, type Mm } from '../../body';

/** A paper: its size in mm as fed, upright. A roll is as long as it need be: `height` is then the longest it may get. */
export type Paper = { readonly id: string; readonly width: Mm; readonly height: Mm; readonly roll?: true };

/** What one row of the table says: the size, and where it is from. */
type PaperRow = { readonly width: Mm; readonly height: Mm; readonly source: string };

const inches = (width: number, height: number): { readonly width: Mm; readonly height: Mm } => ({
  width: width * MM_PER_INCH,
  height: height * MM_PER_INCH,
});

/** Adding a paper is adding a row. */
export const papers = {
  a4: { width: 210, height: 297, source: 'ISO 216' },
  letter: { ...inches(8.5, 11), source: 'ANSI/ASME Y14.1, size A' },
  legal: { ...inches(8.5, 14), source: 'common practice in North America, not in ANSI/ASME Y14.1' },
  a3: { width: 297, height: 420, source: 'ISO 216' },
  tabloid: { ...inches(11, 17), source: 'ANSI/ASME Y14.1, size B' },
  a0: { width: 841, height: 1189, source: 'ISO 216' },
  either: { width: 210, height: 11 * MM_PER_INCH, source: 'what ISO 216 A4 and ANSI/ASME Y14.1 size A share' },
} as const satisfies Readonly<Record<string, PaperRow>>;

/** Every way to name a paper, for lists: a roll is named with its width. */
export const paperIds: readonly string[] = [...Object.keys(papers), 'roll:<mm>'];

/** Rolls: wide enough for the first page's words, and no wider than plotters take (common practice, no source). */
export const NARROWEST_ROLL_MM = 210;
export const WIDEST_ROLL_MM = 2000;

/** The longest page a PDF may have without a user unit: 14 400 units of 1/72 in (ISO 32000-1, annex C), rounded down. */
export const LONGEST_ROLL_MM = 5000;

/** The paper of an id such as `a4` or `roll:610`; undefined where there is none of that name. */
export function findPaper(id: string): Paper | undefined {
  const row = Object.entries(papers).find(([name]) => name === id)?.[1];
  if (row) return { id, width: row.width, height: row.height };
  const roll = /^roll:(\d{1,4}(?:\.\d{1,2})?)$/.exec(id);
  const width = Number(roll?.[1]);
  if (!roll || width < NARROWEST_ROLL_MM || width > WIDEST_ROLL_MM) return undefined;
  return { id, width, height: LONGEST_ROLL_MM, roll: true };
}
