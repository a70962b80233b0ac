import type { MeasureId } from '../../body';
import { Gap, useWords } from '../../parts';
import type { Then } from './then';

type StepActsProps = {
  readonly onSkip: () => void;
  readonly onAgain: () => void;
  readonly onNext: () => void;
  readonly canRepeat: boolean;
  readonly wish: boolean;
  readonly then: Then;
  readonly following: MeasureId | null;
  readonly after: 'wishes' | 'review';
};

/** What can be done with a step: leave it, take it once more, go on. */
export function StepActs({ onSkip, onAgain, onNext, canRepeat, wish, then, following, after }: StepActsProps) {
  const { say } = useWords();
  const next = then ? then.measure : following;
  return (
    <footer class="step-acts">
      <button type="button" class="quiet" onClick={onSkip}>
        {say('screen.step.skip')}
      </button>
      {!wish && (
        <button type="button" class="plain" disabled={!canRepeat} onClick={onAgain}>
          {say('screen.step.again')}
        </button>
      )}
      <button type="button" class="go" onClick={onNext}>
        <span>
          <span class="go-small">{say(then ? 'screen.step.back-to' : 'screen.step.next')}</span>
          <Gap />
          {next ? say(`measure.${next}.name`) : say(`screen.step.${then?.screen ?? after}`)}
        </span>
      </button>
    </footer>
  );
}
