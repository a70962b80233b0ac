// What the standard PDF fonts can write: WinAnsi letters (ISO 32000-1, annex D). Fractions are drawn by us, alike for
// halves and eighths; letters the fonts lack are drawn as a picture where one is handed in, else as an empty box.

/** Letters of code page 1252: those of Unicode's first 256 that print, and some from elsewhere. */
const WIN_ANSI = /^[\x20-\x7e\xa0-\xff€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]*$/u;

/** Part of a text: letters the fonts have, a fraction, or one letter (with its marks) they lack. */
export type Run =
  | { readonly kind: 'plain'; readonly text: string }
  | { readonly kind: 'fraction'; readonly above: string; readonly below: string }
  | { readonly kind: 'missing'; readonly letter: string };

/** Halves to sixteenths, as `1/2` standing alone, or as one letter. */
const FRACTION = /(?<![\d/])(\d{1,2})\/(2|4|8|16)(?![\d/])|[¼½¾⅛⅜⅝⅞]/u;

const written: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

export function runsOf(text: string): readonly Run[] {
  const runs: Run[] = [];
  let rest = text.normalize('NFC').replaceAll('\u00a0', ' ');
  for (let found = FRACTION.exec(rest); found; found = FRACTION.exec(rest)) {
    runs.push(...lettersOf(rest.slice(0, found.index)));
    const [above = '', below = ''] = (written[found[0]] ?? found[0]).split('/');
    runs.push({ kind: 'fraction', above, below });
    rest = rest.slice(found.index + found[0].length);
  }
  return [...runs, ...lettersOf(rest)];
}

/** The letters of a text that the standard fonts lack, each once, so that whoever prints can say so. */
export function lettersWithout(text: string): readonly string[] {
  return [...new Set(runsOf(text).flatMap((run) => (run.kind === 'missing' ? [run.letter] : [])))];
}

function lettersOf(text: string): readonly Run[] {
  if (WIN_ANSI.test(text)) return text === '' ? [] : [{ kind: 'plain', text }];
  const runs: Run[] = [];
  let plain = '';
  for (const { segment } of new Intl.Segmenter(undefined, { granularity: 'grapheme' }).segment(text)) {
    if (WIN_ANSI.test(segment)) plain += segment;
    else {
      if (plain !== '') runs.push({ kind: 'plain', text: plain });
      plain = '';
      runs.push({ kind: 'missing', letter: segment });
    }
  }
  return plain === '' ? runs : [...runs, { kind: 'plain', text: plain }];
}
