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
export function partsOf(text: string): readonly string[] {
  const parts = text.match(/[^ ]* |[^ ]+/g) ?? [];
  return parts.flatMap((part) => (WITHOUT_SPACES.test(part) ? wordsIn(part) : [part]));
}

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

/** A number and its unit, or letters of another script, are no place to break. */
const staysWith = (last: string, next: string): boolean =>
  !WITHOUT_SPACES.test(last.slice(-1)) && !WITHOUT_SPACES.test(next);

const words = new Intl.Segmenter('ja', { granularity: 'word' });
