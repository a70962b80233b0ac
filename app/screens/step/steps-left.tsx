import type { MeasureId } from '../../body';
import { useWords } from '../../parts';
import type { Making } from '../shared/making/making';
import { stepsLeft } from '../shared/making/numbers-left';
import { to } from '../shared/route';
import './steps-left.css';

/** How much there is still to measure, and the way to the list of all steps. */
export function StepsLeft({ making, measure }: { readonly making: Making; readonly measure: MeasureId }) {
  const { say } = useWords();
  const left = stepsLeft(making);
  const said = [
    say(left.count === 0 ? 'screen.steps.none' : 'screen.steps.short', left),
    ...(left.count === 0 ? [] : [say('screen.steps.minutes', left)]),
  ];
  return (
    <a
      class="steps-left"
      href={`${to('toy', making.toy.id, making.garment.id, 'steps')}?from=${measure}`}
      title={say('screen.steps.title')}
    >
      {said.map((words) => (
        <span key={words}>{words} </span>
      ))}
    </a>
  );
}
