import type { MeasureId } from '../../../body';
import { useWords } from '../../../parts';
import { to } from '../route';
import type { Making } from './making';
import { stepsLeft } from './numbers-left';
import './steps-left.css';

type StepsLeftProps = {
  readonly making: Making;
  /** The step that the list of all steps leads back to. */
  readonly measure?: MeasureId | undefined;
};

/** How much there is still to measure, and the way to the list of all steps. */
export function StepsLeft({ making, measure }: StepsLeftProps) {
  const { say } = useWords();
  const left = stepsLeft(making);
  const said = [
    say(left.count === 0 ? 'screen.steps.none' : 'screen.steps.short', left),
    ...(left.count === 0 ? [] : [say('screen.steps.minutes', left)]),
  ];
  return (
    <a
      class="steps-left"
      href={`${to('toy', making.toy.id, making.garment.id, 'steps')}${measure ? `?from=${measure}` : ''}`}
      title={say('screen.steps.title')}
    >
      {said.map((words) => (
        <span key={words}>{words} </span>
      ))}
    </a>
  );
}
