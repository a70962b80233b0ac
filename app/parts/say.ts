import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Hand, Say } from '../body';

/** What every part needs to put numbers and codes into the maker's words. */
export type Speech = { readonly say: Say; readonly hand: Hand };

const nothing: Speech = {
  say: (code) => code,
  hand: { unit: 'in', locale: 'en' },
};

export const WordsContext = createContext<Speech>(nothing);

export const useWords = (): Speech => useContext(WordsContext);

/** The words of the first of these codes that has any; the last code as it is where none has. */
export function sayFirst(say: Say, codes: readonly string[], values?: Parameters<Say>[1]): string {
  const found = codes.map((code) => [code, say(code, values)] as const).find(([code, words]) => words !== code);
  return found?.[1] ?? codes.at(-1) ?? '';
}
