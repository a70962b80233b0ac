import { useEffect, useRef, useState } from 'preact/hooks';
import type { Flag, MeasureId } from '../../body';
import { useWords } from '../../parts';
import { keepFlag } from '../../storage';
import { flagWords } from '../shared/making/flag-words';
import { flagKey, flagNumbers, type Making } from '../shared/making/making';
import { type Remedy, remedyOf } from '../shared/making/remedy';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import './flag-slip.css';

type FlagSlipProps = {
  readonly making: Making;
  readonly measure: MeasureId;
  readonly flags: readonly Flag[];
  readonly onRemedy: (remedy: Remedy) => void;
  /** `more`: beside the readings there are; else in their place. */
  readonly onAgain: (more: boolean) => void;
  readonly onDone: () => void;
};

/** A doubt about the number, in the keypad's place: measure again, put it right in one tap, or keep it. */
export function FlagSlip({ making, measure, flags, onRemedy, onAgain, onDone }: FlagSlipProps) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const [at, setAt] = useState(0);
  const slip = useRef<HTMLElement>(null);
  useEffect(() => slip.current?.focus(), [at]);
  const flag = flags[at];
  if (!flag) return null;
  const pass = () => (at + 1 < flags.length ? setAt(at + 1) : onDone());
  const keep = () =>
    attempt(async () => {
      await keepFlag(making.toy.id, flagKey(flag), flagNumbers(flag, making.body));
      pass();
    });
  const remedy = remedyOf(flag, say, hand, measure);
  return (
    <section class="slip ask flag-slip" tabIndex={-1} ref={slip} aria-live="polite">
      <p>{flagWords(say, flag)}</p>
      <div class="slip-acts">
        {remedy && (
          <button type="button" class="go" onClick={() => onRemedy(remedy)}>
            {remedy.words}
          </button>
        )}
        {flag.measures.map((id) =>
          id === measure ? (
            <button type="button" class="plain" key={id} onClick={() => onAgain(flag.code === 'readings-apart')}>
              {say('screen.flag.again')}
            </button>
          ) : (
            <a
              class="plain"
              key={id}
              href={`${to('toy', making.toy.id, making.garment.id, 'measure', id)}?then=${measure}`}
            >
              {say('screen.flag.other', { name: say(`measure.${id}.name`) })}
            </a>
          ),
        )}
        <button type="button" class="quiet" onClick={flag.severity === 'impossible' ? pass : keep}>
          {say(flag.severity === 'impossible' ? 'screen.flag.later' : 'screen.flag.keep')}
        </button>
      </div>
    </section>
  );
}
