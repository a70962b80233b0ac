import { Page, useWords } from '../../parts';
import { DoubtCard } from '../shared/making/doubt-card';
import { flagWords } from '../shared/making/flag-words';
import { lackingOf } from '../shared/making/lacking';
import { type Making, tapedOf } from '../shared/making/making';
import { makingWords, wholeAddress } from '../shared/making/outfit';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { MeasureRow } from './measure-row';
import { Telling } from './telling';
import './review.css';

/** All numbers on one page before the pattern is drawn, and what is doubtful about them. */
export function ReviewScreen({ params }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => <ReviewPage making={making} />}
    </WithMaking>
  );
}

function ReviewPage({ making }: { readonly making: Making }) {
  const words = useWords();
  const { say } = words;
  const { toy, garment, body, steps, readings, flags } = making;
  usePlace(toy.id, garment.id, 'review');
  const taped = tapedOf(steps);
  const taken = taped.filter(({ measure }) => readings[measure]).length;
  const doubts = flags.filter(({ severity }) => severity !== 'note');
  const lacking = lackingOf(making);
  return (
    <Page
      title={say('screen.review.title')}
      back={to('toy', toy.id)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={makingWords(say, making)}
      acts={
        lacking ? (
          <a
            class="go"
            href={`${to('toy', toy.id, garment.id, 'measure', lacking.measure)}${lacking.why === 'vague' ? '?then=review' : ''}`}
          >
            {say(`screen.review.${lacking.why}`, { name: say(`measure.${lacking.measure}.name`) })}
          </a>
        ) : (
          <a class="go" href={wholeAddress(making)}>
            {say('screen.review.draw')}
          </a>
        )
      }
    >
      <p class="soft">
        {say(taken === taped.length ? 'screen.review.all' : 'screen.review.some', {
          count: taped.length - taken,
          taken,
          all: taped.length,
        })}
      </p>
      {doubts.map((flag) => (
        <DoubtCard key={flag.code + flag.measures.join()} making={making} flag={flag} />
      ))}
      <Telling making={making} />
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
        {[...making.worksOut, ...making.guessed].map((measure) => (
          <li key={measure}>
            <MeasureRow making={making} measure={measure} doubted={false} />
          </li>
        ))}
      </ul>
      {flags
        .filter(({ severity }) => severity === 'note')
        .map((flag) => (
          <p class="soft small" key={flag.code}>
            {flagWords(words, flag, body)}
          </p>
        ))}
    </Page>
  );
}
