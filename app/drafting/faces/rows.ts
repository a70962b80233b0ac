/** A face: what it writes, whether its letters join or change beside others, and the languages that are written in it, so that it is fetched before anything is drawn. */
type Row = { readonly writes: RegExp; readonly languages: readonly string[]; readonly joins: boolean };

/** Asked from the top: signs that several scripts use are written by the first that knows them. */
const rows = {
  // Its comma, semicolon, question mark and lengthener are shared with its neighbours.
  arabic: { writes: /^[\p{Script=Arabic}\u060c\u061b\u061f\u0640]/u, languages: ['ar'], joins: true },
  japanese: {
    writes: /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\u3000-\u303f\u30fb\u30fc\uff00-\uffef]/u,
    languages: ['ja'],
    joins: false,
  },
  latin: {
    writes: /^(?!\p{Extended_Pictographic})[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Common}]/u,
    languages: [],
    joins: true,
  },
} as const satisfies Record<string, Row>;

export type FaceId = keyof typeof rows;

export const faceIds = Object.keys(rows) as readonly FaceId[];

/** The face that is asked for a letter (with its marks); none has every letter. */
export const faceOfLetter = (letter: string): FaceId | undefined => faceIds.find((id) => rows[id].writes.test(letter));

export const joinsLetters = (id: FaceId): boolean => rows[id].joins;

/** The faces a language is written in, by its BCP 47 tag, beside the letters every PDF reader brings. */
export const facesOfLanguage = (tag: string): readonly FaceId[] =>
  faceIds.filter((id) => (rows[id].languages as readonly string[]).includes(tag.split('-')[0] ?? ''));
