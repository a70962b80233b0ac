/** Turns a code and its values (several names: a list of them) into words of the maker's language; handed to whatever prints words. */
export type Say = (code: string, values?: Readonly<Record<string, number | string | readonly string[]>>) => string;

/** Sentences one after the other, with what the language puts between them: Japanese puts nothing. */
export const inTurn = (sentences: readonly string[], say: Say): string =>
  sentences.length === 0 ? '' : sentences.reduce((one, two) => say('list.after', { one, two }));
