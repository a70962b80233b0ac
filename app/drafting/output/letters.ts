// A line as runs in the order they are seen: letters of the standard PDF fonts (WinAnsi, ISO 32000-1, annex D) as they are; fractions
// drawn by us, alike for halves and eighths; other scripts shaped by their face; letters no face has as pictures or empty boxes.

import { type Direction, type Face, type Faces, faceOfLetter, type Glyph, levelsOf, mirrored } from '../faces';

/** Letters of code page 1252: those of Unicode's first 256 that print, and some from elsewhere. */
const WIN_ANSI = /^[\x20-\x7e\xa0-\xff€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]*$/u;

/** Most lines: of those letters alone, with no fraction among them and nothing to put in another's place. */
const PLAIN = /^[\x20-\x2e\x30-\x7e\xa1-\xbb\xbf-\xff€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]+$/u;

/** Part of a line: letters the fonts have, a fraction, letters shaped by a face, or letters (with their marks) that none has. */
export type Run =
  | { readonly kind: 'plain'; readonly text: string }
  | { readonly kind: 'fraction'; readonly above: string; readonly below: string }
  | { readonly kind: 'shaped'; readonly face: Face; readonly glyphs: readonly Glyph[] }
  | { readonly kind: 'missing'; readonly letters: string; readonly picture: boolean };

/** Which way the language runs, and the faces there are. */
export type Script = { readonly direction: Direction; readonly faces: Faces };

export const westernScript: Script = { direction: 'ltr', faces: () => undefined };

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

/** Signs that turn lines and choose between shapes: they have done their work once the runs are told apart. */
const UNSEEN = /[\u200b\u2060\ufeff\p{Bidi_Control}]|\p{Variation_Selector}/gu;
/** Spaces no line breaks at, wide or narrow: lines are broken by now, and the standard fonts have one space for all. */
const UNBROKEN = /[\u00a0\u202f]/gu;
/** A word that is written in one face, whatever single letters other fonts have. */
const WORD = /[\p{Script=Latin}\p{M}'’-]+/gu;
const PICTURE = /\p{Extended_Pictographic}|\p{Regional_Indicator}/u;

/** Spaces that stand before another, or at the beginning or end of a line or of what is set apart in it. */
const NEEDLESS = / +(?= |[\u2069]|$)|(?<=^|[\u2066-\u2068]) +/gu;

export function runsOf(text: string, script: Script = westernScript): readonly Run[] {
  if (script.direction === 'ltr' && PLAIN.test(text)) return [{ kind: 'plain', text }];
  return levelsOf(text.normalize('NFC').replace(UNBROKEN, ' '), script.direction).flatMap((level) =>
    level.direction === 'rtl' ? leftwards(level.text, script.faces) : rightwards(level.text, script.faces),
  );
}

/**
 * What of a text no font or face has, each once, so that whoever prints can say so: letters that become boxes, and
 * pictures among them, which are left out where nobody draws them.
 */
export function lettersWithout(text: string, faces: Faces = westernScript.faces) {
  const missing = runsOf(text, { direction: 'ltr', faces }).filter((run) => run.kind === 'missing');
  const once = (picture: boolean): readonly string[] => [
    ...new Set(missing.filter((run) => run.picture === picture).flatMap(({ letters }) => graphemes(letters))),
  ];
  return { boxes: once(false), pictures: once(true) };
}

/** A text where nobody draws pictures: without those that no face has, and without the space each would leave beside another or at an end. */
export function withoutPictures(text: string, faces: Faces): string {
  if (!PICTURE.test(text)) return text;
  const gone = new Set(lettersWithout(text, faces).pictures);
  const parts = graphemes(text).filter((part) => !gone.has(part.replace(UNSEEN, '')));
  return gone.size === 0 ? text : parts.join('').replace(NEEDLESS, '');
}

export const graphemes = (text: string): readonly string[] =>
  Array.from(segments.segment(text), ({ segment }) => segment);
const segments = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

function rightwards(text: string, faces: Faces): readonly Run[] {
  const runs: Run[] = [];
  let rest = text;
  for (let found = FRACTION.exec(rest); found; found = FRACTION.exec(rest)) {
    runs.push(...lettersOf(rest.slice(0, found.index), faces));
    const [above = '', below = ''] = (written[found[0]] ?? found[0]).split('/');
    runs.push({ kind: 'fraction', above, below });
    rest = rest.slice(found.index + found[0].length);
  }
  return [...runs, ...lettersOf(rest, faces)];
}

function lettersOf(text: string, faces: Faces): readonly Run[] {
  if (WIN_ANSI.test(text)) return text === '' ? [] : [{ kind: 'plain', text }];
  const seen = text.replace(UNSEEN, '');
  const foreign = foreignWords(seen);
  let at = 0;
  const parts = graphemes(seen).map((letters): Part => {
    const whole = foreign.find(({ from, end }) => from <= at && at < end)?.letter;
    at += letters.length;
    if (WIN_ANSI.test(letters) && whole === undefined) return { letters, face: 'standard' };
    const face = faceFor(whole ?? letters, faces);
    return { letters, face: face?.has(letters) ? face : WIN_ANSI.test(letters) ? 'standard' : undefined };
  });
  return joined(parts, 'ltr');
}

/** Words with a letter that the standard fonts lack: where each lies, and the first such letter. */
function foreignWords(text: string) {
  return Array.from(text.matchAll(WORD), ({ 0: word, index }) => ({
    from: index,
    end: index + word.length,
    letter: graphemes(word).find((letter) => !WIN_ANSI.test(letter)),
  })).filter(({ letter }) => letter !== undefined);
}

/** What runs leftwards is written in its own face as far as that goes, brackets and spaces too: it knows which way they turn. */
function leftwards(text: string, faces: Faces): readonly Run[] {
  const seen = graphemes(text.replace(UNSEEN, ''));
  const own = seen.map((letters) => faceFor(letters, faces)).find((face) => face && face.id !== 'latin');
  const parts = seen.map((letters): Part => {
    const face = own?.has(letters) ? own : faceFor(letters, faces);
    return { letters, face: face?.has(letters) ? face : WIN_ANSI.test(letters) ? 'standard' : undefined };
  });
  return joined(parts, 'rtl');
}

function faceFor(letters: string, faces: Faces): Face | undefined {
  const id = faceOfLetter(letters);
  return id && faces(id);
}

type Part = { readonly letters: string; readonly face: Face | 'standard' | undefined };

/** Neighbours of one face as one run, in the order they are seen. */
function joined(parts: readonly Part[], direction: Direction): readonly Run[] {
  const together: Part[] = [];
  for (const part of parts) {
    const last = together.at(-1);
    const one = last && last.face === part.face && (part.face !== undefined || bothLetters(last, part));
    if (one) together[together.length - 1] = { ...last, letters: last.letters + part.letters };
    else together.push(part);
  }
  const runs = together.map(({ letters, face }): Run => {
    if (face === 'standard') return { kind: 'plain', text: direction === 'rtl' ? mirrored(letters) : letters };
    if (face) return { kind: 'shaped', face, glyphs: face.shaped(letters, direction) };
    return { kind: 'missing', letters, picture: PICTURE.test(letters) };
  });
  return direction === 'rtl' ? runs.reverse() : runs;
}

/** A picture stands alone; letters of a script are handed on as the word they are. */
const bothLetters = (one: Part, other: Part): boolean => !PICTURE.test(one.letters) && !PICTURE.test(other.letters);
