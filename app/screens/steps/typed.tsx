import { Page, UnitToggle, useWords } from '../../parts';
import type { Making } from '../shared/making/making';
import { makingWords } from '../shared/making/outfit';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { setUnit } from '../shared/set-unit';
import { useAttempt } from '../shared/trouble/attempt';
import { NumberRow } from './number-row';
import '../shared/making/amount-field.css';
import './typed.css';

/** Numbers from a sheet of paper, typed in one under the other, numbered as there. */
export function TypedScreen({ params }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => <TypedPage making={making} />}
    </WithMaking>
  );
}

function TypedPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, steps } = making;
  const attempt = useAttempt();
  usePlace(toy.id, garment.id, 'typed');
  return (
    <Page
      title={say('screen.type-in.title')}
      back={to('toy', toy.id, garment.id, 'steps')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={makingWords(say, making)}
      acts={
        <a class="go" href={to('toy', toy.id, garment.id, 'review')}>
          {say('screen.wishes.next')}
        </a>
      }
    >
      <div class="typed-head">
        <p class="soft small">{say('screen.type-in.what')}</p>
        <UnitToggle onUnit={(unit) => void attempt(() => setUnit(toy, unit))} />
      </div>
      <ol class="typed-list">
        {steps.map((step, index) => (
          <NumberRow key={step.measure} making={making} step={step} at={index + 1} />
        ))}
      </ol>
    </Page>
  );
}
