import bidiOf from 'bidi-js';

/** Which way lines run. */
export type Direction = 'ltr' | 'rtl';

/** Part of a line that runs one way. */
export type Level = { readonly text: string; readonly direction: Direction };

/** Letters from right to left, and signs that turn or isolate: a line without any is as it is written. */
const TURNS =
  /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufeff\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** The library reads half a sign at a time, and takes every half for a letter that runs rightwards: what stands in such a sign's place, as long as it. */
const STAND_INS: readonly (readonly [sign: RegExp, instead: string])[] = [
  [/(?=[\u{10000}-\u{10ffff}])\p{Extended_Pictographic}/gu, '☆☆'],
  [/[\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/gu, 'אא'],
];

const bidi = bidiOf();

/** A line cut where its direction changes, in the order seen from left to right (Unicode Standard Annex 9). */
export function levelsOf(line: string, direction: Direction): readonly Level[] {
  if (direction === 'ltr' && !TURNS.test(line)) return [{ text: line, direction }];
  const read = STAND_INS.reduce((text, [sign, instead]) => text.replace(sign, instead), line);
  const { levels } = bidi.getEmbeddingLevels(read, direction);
  const runs: { text: string; level: number }[] = [];
  for (let at = 0; at < line.length; at++) {
    const level = levels[at] ?? 0;
    const last = runs.at(-1);
    if (last?.level === level) last.text += line[at];
    else runs.push({ text: line[at] ?? '', level });
  }
  const highest = Math.max(0, ...runs.map(({ level }) => level));
  for (let level = highest; level > 0; level--) turnAround(runs, level);
  return runs.map(({ text, level }) => ({ text, direction: level % 2 === 1 ? 'rtl' : 'ltr' }));
}

/** What runs leftwards as it is seen from the left: its signs turned round, brackets facing the other way (rule L4). */
export const mirrored = (text: string): string => [...facingBack(text)].reverse().join('');

/** The same signs in their order, brackets facing the other way. */
export const facingBack = (text: string): string =>
  [...text].map((sign) => bidi.getMirroredCharacter(sign) ?? sign).join('');

/** Rule L2: neighbours of at least this level change places. */
function turnAround(runs: { text: string; level: number }[], level: number): void {
  for (let from = 0; from < runs.length; from++) {
    let end = from;
    while ((runs[end]?.level ?? -1) >= level) end++;
    if (end - from > 1) runs.splice(from, end - from, ...runs.slice(from, end).reverse());
    from = Math.max(from, end - 1);
  }
}
