// Where a line may end: behind a space, and in scripts written without any, between words.

/** Scripts that need no spaces between words. */
const WITHOUT_SPACES =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}]/u;

/** What no line begins with: closing brackets, stops, small kana and what lengthens a sound (JIS X 4051, from memory). */
const NEVER_FIRST =
  /^[\p{Pe}\p{Pf}、。，．,.:;!?！？：；・ーゝゞ々ぁぃぅぇぉっゃゅょゎァィゥェォッャュョヮヵヶ…‥%％°℃]/u;
/** And what no line ends with: opening brackets and quotes. */
const NEVER_LAST = /[\p{Ps}\p{Pi}]$/u;

/** A text as parts between which a line may end; spaces stay at the end of the part they follow. */
export const partsOf = (text: string): readonly string[] =>
  WITHOUT_SPACES.test(text) ? wordsOf(text).reduce(withinPhrase, []) : wordsOf(text);

/** And where a part is wider than its line: the words it is made of. A whole number and the fraction behind it are one: 3 3/4. */
export function wordsOf(text: string): readonly string[] {
  const parts = text.match(/(?:[^ ]|(?<=\d) (?=\d{1,2}\/\d))* ?/g)?.filter((part) => part !== '') ?? [];
  return parts.flatMap((part) => (WITHOUT_SPACES.test(part) ? wordsIn(part) : [part]));
}

/**
 * Endings and particles of Japanese stay with what they follow, and so do the parts of one word (the dictionary of words
 * parts some of our trade's) and a number and what it counts: a line then ends where a reader would breathe.
 */
function withinPhrase(phrases: readonly string[], word: string): readonly string[] {
  const last = phrases.at(-1) ?? '';
  const ends = ENDS_IN_LETTER.test(last) && ENDING.test(word);
  const compound = ENDS_IN_STEM.test(last) && STEM.test(word) && last.length < LONGEST_COMPOUND;
  return ends || compound ? [...phrases.slice(0, -1), last + word] : [...phrases, word];
}

/** In letters: what is longer is no compound but a language that joins all its words, such as Chinese. */
const LONGEST_COMPOUND = 8;
/** In letters; what is longer is a word of its own. */
const ENDING = /^\p{Script=Hiragana}{1,3}[\p{P}]*$/u;
const STEM = /^[\p{Script=Han}\p{Script=Katakana}\p{Script=Latin}]/u;
/** The last is a verb's that makes a noun with what follows: 折り代, 裁ち端. */
const ENDS_IN_STEM = /(?:[\p{Script=Han}\p{Script=Katakana}ー\d]|\p{Script=Han}[いちりしみ])$/u;
const ENDS_IN_LETTER = /[\p{L}\d\p{Pe}%]$/u;

function wordsIn(text: string): readonly string[] {
  const parts: string[] = [];
  for (const { segment } of words.segment(text)) {
    const last = parts.at(-1);
    const stays =
      last !== undefined &&
      (segment === ' ' ||
        glued(last, segment) ||
        NEVER_FIRST.test(segment) ||
        NEVER_LAST.test(last) ||
        staysWith(last, segment));
    if (stays) parts[parts.length - 1] = last + segment;
    else parts.push(segment);
  }
  return parts;
}

/** On either side of a space that no line is broken at. */
const glued = (last: string, next: string): boolean => last.endsWith(NO_BREAK) || next.startsWith(NO_BREAK);
const NO_BREAK = '\u00a0';

/** A number and its unit, or letters of another script, are no place to break; a wide stop or bracket before them is. */
const staysWith = (last: string, next: string): boolean =>
  !WITHOUT_SPACES.test(last.slice(-1)) && !WIDE_SIGN.test(last) && !WITHOUT_SPACES.test(next);
const WIDE_SIGN = /[\u3000-\u303f\uff01-\uff20]$/u;

const words = new Intl.Segmenter('ja', { granularity: 'word' });
