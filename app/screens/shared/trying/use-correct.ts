import { useWords } from '../../../parts';
import { changeToy } from '../../../storage';
import type { Making } from '../making/making';
import { go, to } from '../route';
import { useAttempt } from '../trouble/attempt';
import { useNotice } from '../trouble/notice';
import type { Corrections } from './propose';

/** Keeps corrections with the toy, shows the pattern they give, and offers to take them back. */
export function useCorrect({ toy, garment }: Pick<Making, 'toy' | 'garment'>): (corrections: Corrections) => void {
  const { say } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  return (corrections) =>
    void attempt(async () => {
      const before = toy.corrections;
      await changeToy(toy.id, { corrections });
      go(to('toy', toy.id, garment.id, 'pattern'));
      notice({
        words: say('screen.tried.kept'),
        act: {
          words: say('screen.undo'),
          run: () => void attempt(async () => void (await changeToy(toy.id, { corrections: before }))),
        },
      });
    });
}
