import { Page, useWords } from '../../parts';
import { DoubtCard } from '../shared/making/doubt-card';
import { flagWords } from '../shared/making/flag-words';
import type { Making } from '../shared/making/making';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { MeasureRow } from './measure-row';
import './review.css';

/** All numbers on one page before the pattern is drawn, and what is doubtful about them. */
export function ReviewScreen({ params }: ScreenProps) {
  return <WithMaking params={params}>{(making) => <ReviewPage making={making} />}</WithMaking>;
}

function ReviewPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, steps, readings, flags } = making;
  usePlace(toy.id, garment.id, 'review');
  const taken = steps.filter(({ measure }) => readings[measure]).length;
  const doubts = flags.filter(({ severity }) => severity !== 'note');
  const first = steps.find(({ measure }) => !readings[measure])?.measure ?? null;
  return (
    <Page
      title={say('screen.review.title')}
      back={to('toy', toy.id)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`garment.${garment.order.garment}.name`)}
      acts={
        taken === 0 && first ? (
          <a class="go" href={to('toy', toy.id, garment.id, 'measure', first)}>
            {say('screen.review.measure')}
          </a>
        ) : (
          <a class="go" href={to('toy', toy.id, garment.id, 'pattern')}>
            {say('screen.review.draw')}
          </a>
        )
      }
    >
      <p class="soft">
        {say(taken === steps.length ? 'screen.review.all' : 'screen.review.some', {
          count: steps.length - taken,
          taken,
          all: steps.length,
        })}
      </p>
      {doubts.map((flag) => (
        <DoubtCard key={flag.code + flag.measures.join()} making={making} flag={flag} />
      ))}
      <ul class="measures">
        {steps.map(({ measure }) => (
          <li key={measure}>
            <MeasureRow
              making={making}
              measure={measure}
              doubted={doubts.some(({ measures }) => measures.includes(measure))}
            />
          </li>
        ))}
        {making.worksOut.map((measure) => (
          <li key={measure}>
            <MeasureRow making={making} measure={measure} doubted={false} />
          </li>
        ))}
      </ul>
      {flags
        .filter(({ severity }) => severity === 'note')
        .map((flag) => (
          <p class="soft small" key={flag.code}>
            {flagWords(say, flag)}
          </p>
        ))}
    </Page>
  );
}
