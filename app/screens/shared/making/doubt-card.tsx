import { useId } from 'preact/hooks';
import type { Flag } from '../../../body';
import { Icon, useWords } from '../../../parts';
import { keepFlag } from '../../../storage';
import { DoubtPair } from '../doubt/doubt-pair';
import { to } from '../route';
import { useAttempt } from '../trouble/attempt';
import { flagWords } from './flag-words';
import { flagKey, flagNumbers, type Making } from './making';
import { putRight, remedyOf } from './remedy';

type DoubtCardProps = { readonly making: Making; readonly flag: Flag; readonly then?: 'review' | 'pattern' };

/** A doubt on a page of many numbers: measure again (and come back), put it right in one tap, or keep it. */
export function DoubtCard({ making, flag, then = 'review' }: DoubtCardProps) {
  const words = useWords();
  const { say, hand } = words;
  const attempt = useAttempt();
  const id = useId();
  const { toy, garment, body } = making;
  const remedy = remedyOf(flag, say, hand);
  return (
    <fieldset aria-labelledby={id} class={flag.severity === 'impossible' ? 'slip warn' : 'slip ask'}>
      <h2 class="slip-title" id={id}>
        <Icon name="warn" />
        {say(`screen.flag.${flag.severity}`)}
      </h2>
      <DoubtPair making={making} flag={flag} />
      <p>{flagWords(words, flag, body)}</p>
      <div class="slip-acts">
        {remedy && (
          <button type="button" class="plain" onClick={() => attempt(() => putRight(toy.id, remedy))}>
            {remedy.words}
          </button>
        )}
        {flag.measures.map((id) => (
          <a class="plain" key={id} href={`${to('toy', toy.id, garment.id, 'measure', id)}?then=${then}`}>
            {say('screen.flag.other', { name: say(`measure.${id}.name`) })}
          </a>
        ))}
        {flag.severity === 'unlikely' && (
          <button
            type="button"
            class="quiet"
            onClick={() => attempt(async () => void (await keepFlag(toy.id, flagKey(flag), flagNumbers(flag, body))))}
          >
            {say('screen.flag.keep')}
          </button>
        )}
      </div>
    </fieldset>
  );
}
