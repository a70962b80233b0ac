import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Flag, MeasureId } from '../../body';
import { shownLength, useWords } from '../../parts';
import { keepFlag } from '../../storage';
import { DoubtPair } from '../shared/doubt/doubt-pair';
import { doubtWords, inTypedUnit } from '../shared/making/flag-words';
import { flagKey, flagNumbers, type Making } from '../shared/making/making';
import { type Remedy, remedyOf } from '../shared/making/remedy';
import { to } from '../shared/route';
import { passOverTaps } from '../shared/second-taps';
import { useAttempt } from '../shared/trouble/attempt';
import './doubt.css';

type DoubtProps = {
  readonly making: Making;
  /** The measure whose step raised it. */
  readonly measure: MeasureId;
  readonly flag: Flag;
  readonly onRemedy: (remedy: Remedy) => void;
  /** `more`: beside the readings there are; else in their place. */
  readonly onAgain: (more: boolean) => void;
  /** The doubt is set aside, for good or until later. */
  readonly onPass: () => void;
  readonly header: ComponentChildren;
};

/** One doubt, in the place of the step: the toy as the number has it beside the likely one, a sentence, three ways on. */
export function Doubt({ making, measure, flag, onRemedy, onAgain, onPass, header }: DoubtProps) {
  const words = useWords();
  const { say, hand } = words;
  const attempt = useAttempt();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    heading.current?.focus({ preventScroll: true });
    passOverTaps();
  }, [flag]);
  const { severity, measures, code } = flag;
  const [doubted = measure, second] = measures;
  const value = making.body.sizes[doubted]?.value ?? 0;
  const length = shownLength(value, inTypedUnit(value, hand));
  const remedy = remedyOf(flag, say, hand, doubted);
  const other = doubted === measure ? second : measure;
  const cannotBe = severity === 'impossible';
  const keep = () =>
    attempt(async () => {
      await keepFlag(making.toy.id, flagKey(flag), flagNumbers(flag, making.body));
      onPass();
    });
  const again = (id: MeasureId, look: 'go' | 'plain', label: string) =>
    id === measure ? (
      <button type="button" class={look} onClick={() => onAgain(code === 'readings-apart')}>
        {label}
      </button>
    ) : (
      <a class={look} href={`${to('toy', making.toy.id, making.garment.id, 'measure', id)}?then=${measure}`}>
        {label}
      </a>
    );
  return (
    <div class="doubt">
      {header}
      <main class="doubt-room">
        <fieldset class="doubt-main" aria-label={say(`screen.doubt.${severity}`)}>
          <h1 class="doubt-title" tabIndex={-1} ref={heading} aria-describedby="doubt-words">
            <span class={`doubt-tag ${severity}`} aria-hidden="true">
              {say(`screen.doubt.${severity}`)}
            </span>{' '}
            <span>
              {remedy?.meant[1]
                ? say('screen.doubt.swapped')
                : say('screen.doubt.title', { name: say(`measure.${doubted}.name`), length })}
            </span>
          </h1>
          <DoubtPair making={making} flag={flag} />
          <p class="doubt-words" id="doubt-words">
            {doubtWords(words, flag, making.body)}
          </p>
        </fieldset>
      </main>
      <footer class="doubt-acts">
        {again(doubted, 'go', say('screen.flag.again'))}
        {remedy ? (
          <button type="button" class="plain" onClick={() => onRemedy(remedy)}>
            {remedy.words}
          </button>
        ) : (
          other && again(other, 'plain', say('screen.flag.other', { name: say(`measure.${other}.name`) }))
        )}
        <button type="button" class="quiet" onClick={cannotBe ? onPass : keep}>
          {cannotBe
            ? say('screen.flag.later')
            : remedy?.meant[1]
              ? say('screen.flag.keep')
              : say('screen.doubt.keep', { length })}
        </button>
      </footer>
    </div>
  );
}
