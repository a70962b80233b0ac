import type { Draft } from '../../drafting/draft-types';
import { useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import { flagWords } from '../shared/making/flag-words';
import { isKept, type Making } from '../shared/making/making';
import { NumbersAgain } from './numbers-again';

type WorthCheckingProps = { readonly draft: Draft; readonly making: Making };

/** What is odd, and what she had better look at before she cuts. */
export function WorthChecking({ draft, making }: WorthCheckingProps) {
  const words = useWords();
  const { say } = words;
  const { toy, body } = making;
  const flags = draft.flags.filter((flag) => !isKept(toy, flag, body));
  if (flags.length === 0) return null;
  return (
    <Folded
      title={say('screen.pattern.worth')}
      stands={say('screen.pattern.worth-said', { count: flags.length })}
      open={flags.some(({ severity }) => severity !== 'note')}
    >
      <ul class="told-list">
        {flags.map((flag) => (
          <li key={flag.code + flag.measures.join()}>
            {flagWords(words, flag, body)}
            <NumbersAgain measures={flag.measures} making={making} />
          </li>
        ))}
      </ul>
    </Folded>
  );
}
