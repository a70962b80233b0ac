import type { Draft } from '../../drafting/draft-types';
import { useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import { flagWords } from '../shared/making/flag-words';
import { isKept, type Making } from '../shared/making/making';
import { to } from '../shared/route';

type WorthCheckingProps = { readonly draft: Draft; readonly making: Making };

/** What she had better look at before she cuts: what is odd, and the numbers that changes were measured from. */
export function WorthChecking({ draft, making: { toy, garment, body } }: WorthCheckingProps) {
  const words = useWords();
  const { say } = words;
  const flags = draft.flags.filter((flag) => !isKept(toy, flag, body));
  const numbers = [
    ...new Set(
      [...flags, ...draft.adjustments.map(({ check }) => ({ measures: check }))].flatMap(({ measures }) => measures),
    ),
  ];
  if (flags.length === 0 && numbers.length === 0) return null;
  const count = flags.length;
  return (
    <Folded
      title={say('screen.pattern.worth')}
      stands={
        count > 0
          ? say('screen.pattern.worth-said', { count })
          : say('screen.pattern.worth-numbers', { count: numbers.length })
      }
      open={flags.some(({ severity }) => severity !== 'note')}
    >
      <ul class="told-list">
        {flags.map((flag) => (
          <li key={flag.code + flag.measures.join()}>{flagWords(words, flag, body)}</li>
        ))}
      </ul>
      {numbers.length > 0 && (
        <div class="told-checks">
          <span class="soft">{say('screen.pattern.check')}</span>
          {numbers.map((id) => (
            <a key={id} href={`${to('toy', toy.id, garment.id, 'measure', id)}?then=pattern`}>
              {say(`measure.${id}.name`)}
            </a>
          ))}
        </div>
      )}
    </Folded>
  );
}
