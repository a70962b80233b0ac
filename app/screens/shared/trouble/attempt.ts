import type { Say } from '../../../body';
import { sayFirst, useWords } from '../../../parts';
import { codeOf, noteHappening } from './happened';
import { useNotice } from './notice';

/**
 * Runs a deed that may fail (a write, mostly). A failure is said in a notice, with what to do, and noted; the promise
 * tells whether it was done. Whatever was typed stays on the screen.
 */
export function useAttempt(): (deed: () => Promise<void>) => Promise<boolean> {
  const { say } = useWords();
  const notice = useNotice();
  return async (deed) => {
    try {
      await deed();
      return true;
    } catch (error) {
      noteHappening(error);
      notice({ kind: 'trouble', words: troubleWords(say, codeOf(error)) });
      return false;
    }
  };
}

/** What a failure means to the maker, in one sentence. */
export const troubleWords = (say: Say, code: string): string =>
  sayFirst(say, [`screen.trouble.${code}.short`, 'screen.trouble.unknown.short']);
