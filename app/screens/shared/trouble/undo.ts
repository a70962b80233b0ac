import { useWords } from '../../../parts';
import { useAttempt } from './attempt';
import { type Notice, useNotice } from './notice';

/** The way back from what was just done, for a notice; once gone, it is said, with the name of what is back. */
export function useUndo() {
  const { say } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  return (undo: () => Promise<unknown>, name?: string): NonNullable<Notice['act']> => ({
    words: say('screen.undo'),
    run: () =>
      attempt(async () => {
        await undo();
        notice({ words: name === undefined ? say('screen.undone') : say('screen.back-again', { name }) });
      }),
  });
}
