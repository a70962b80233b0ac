import { useEffect, useRef, useState } from 'preact/hooks';
import type { Flag, MeasureId, Mm } from '../../body';
import { shownLength, useWords } from '../../parts';
import { keepFlag } from '../../storage';
import { flagWords } from '../flag-words';
import { flagKey, flagNumbers, type Making } from '../making';
import { to } from '../route';
import { useAttempt } from '../shell/attempt';

type FlagSlipProps = {
  readonly making: Making;
  readonly measure: MeasureId;
  readonly flags: readonly Flag[];
  readonly onCorrect: (mm: Mm) => void;
  readonly onAgain: () => void;
  readonly onDone: () => void;
};

/** A doubt about the number, in the keypad's place: measure again, put it right in one tap, or keep it. */
export function FlagSlip({ making, measure, flags, onCorrect, onAgain, onDone }: FlagSlipProps) {
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
  const better = flag.measures[0] === measure ? flag.values.better : undefined;
  return (
    <section class="slip ask flag-slip" tabIndex={-1} ref={slip} aria-live="polite">
      <p>{flagWords(say, flag)}</p>
      <div class="slip-acts">
        {better !== undefined && (
          <button type="button" class="go" onClick={() => onCorrect(better)}>
            {say('screen.flag.use', { length: shownLength(better, hand) })}
          </button>
        )}
        {flag.measures.map((id) =>
          id === measure ? (
            <button type="button" class="plain" key={id} onClick={onAgain}>
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
