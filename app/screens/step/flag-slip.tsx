import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Flag, MeasureId } from '../../body';
import { Icon, useWords } from '../../parts';
import { keepFlag } from '../../storage';
import { flagWords } from '../shared/making/flag-words';
import { flagKey, flagNumbers, type Making } from '../shared/making/making';
import { type Remedy, remedyOf } from '../shared/making/remedy';
import { to } from '../shared/route';
import { passOverTaps } from '../shared/second-taps';
import { useAttempt } from '../shared/trouble/attempt';
import './flag-slip.css';

type FlagSlipProps = {
  readonly making: Making;
  readonly measure: MeasureId;
  readonly flag: Flag;
  readonly onRemedy: (remedy: Remedy) => void;
  /** `more`: beside the readings there are; else in their place. */
  readonly onAgain: (more: boolean) => void;
  /** The doubt is set aside, for good or until later. */
  readonly onPass: () => void;
};

/** One doubt about the number, in the place of the keys: measure again, put it right or look at the other number, keep it. */
export function FlagSlip({ making, measure, flag, onRemedy, onAgain, onPass }: FlagSlipProps) {
  const words = useWords();
  const { say, hand } = words;
  const attempt = useAttempt();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    heading.current?.focus({ preventScroll: true });
    passOverTaps();
  }, [flag]);
  const keep = () =>
    attempt(async () => {
      await keepFlag(making.toy.id, flagKey(flag), flagNumbers(flag, making.body));
      onPass();
    });
  const cannotBe = flag.severity === 'impossible';
  const remedy = remedyOf(flag, say, hand, measure);
  const other = flag.measures.find((id) => id !== measure);
  return (
    <section class={`slip ${cannotBe ? 'warn' : 'ask'} flag-slip`} aria-live="polite">
      <h2 class="slip-title" tabIndex={-1} ref={heading}>
        <Icon name="warn" />
        {say(`screen.flag.${flag.severity}`)}
      </h2>
      <p>{flagWords(words, flag, making.body)}</p>
      <div class="slip-acts">
        <button type="button" class="go" onClick={() => onAgain(flag.code === 'readings-apart')}>
          {say('screen.flag.again')}
        </button>
        {remedy ? (
          <button type="button" class="plain" onClick={() => onRemedy(remedy)}>
            {remedy.words}
          </button>
        ) : (
          other && (
            <a class="plain" href={`${to('toy', making.toy.id, making.garment.id, 'measure', other)}?then=${measure}`}>
              {say('screen.flag.other', { name: say(`measure.${other}.name`) })}
            </a>
          )
        )}
        <button type="button" class="quiet" onClick={cannotBe ? onPass : keep}>
          {say(cannotBe ? 'screen.flag.later' : 'screen.flag.keep')}
        </button>
      </div>
    </section>
  );
}
