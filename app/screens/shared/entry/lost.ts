import type { MeasureId } from '../../../body';
import { useWords } from '../../../parts';
import type { Making } from '../making/making';
import { troubleWords } from '../trouble/attempt';
import { useNotice } from '../trouble/notice';
import type { EntryOptions } from './entry';
import { saveUnsaved } from './unsaved';

/** Says what could not be kept once its screen is left, and offers it as a file. */
export function useLost(making: Making, measure: MeasureId): EntryOptions['onLost'] {
  const { say, hand } = useWords();
  const notice = useNotice();
  const name = say(`measure.${measure}.name`);
  return (error, typed) =>
    notice({
      kind: 'trouble',
      stays: true,
      words: say('list.after', {
        one: say('screen.step.lost', { name, toy: making.toy.name, typed }),
        two: troubleWords(say, error.code),
      }),
      act: { words: say('screen.step.as-file'), run: () => saveUnsaved(making, measure, typed, { say, hand }) },
    });
}
