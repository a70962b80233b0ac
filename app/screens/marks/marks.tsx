import { useState } from 'preact/hooks';
import { type MarkId, markPicture, marksOf } from '../../measuring';
import { FigurePicture, Page, useWords } from '../../parts';
import { type Making, nextStep } from '../shared/making/making';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import './marks.css';

/** Step zero, never skipped: threads and bits of tape that the steps speak of. */
export function MarksScreen({ params }: ScreenProps) {
  return <WithMaking params={params}>{(making) => <MarksPage making={making} />}</WithMaking>;
}

function MarksPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, body, steps, readings } = making;
  const marks = marksOf[toy.kind];
  const [now, setNow] = useState<MarkId | undefined>(marks[0]);
  usePlace(toy.id, garment.id, 'marks');
  const first =
    steps[0] && !readings[steps[0].measure] ? steps[0].measure : nextStep(making, steps[0]?.measure ?? 'neck-girth');
  const onward = first ? to('toy', toy.id, garment.id, 'measure', first) : to('toy', toy.id, garment.id, 'review');
  return (
    <Page
      title={say('screen.marks.title')}
      back={to('toy', toy.id, garment.id, 'choices')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`garment.${garment.order.garment}.name`)}
      progress={{ done: 0, all: steps.length }}
      acts={
        <a class="go" href={onward}>
          {say('screen.marks.done')}
        </a>
      }
    >
      <div class="marks">
        <div class="marks-figure">
          <FigurePicture
            figure={markPicture(toy.kind, toy.traits, body.sizes, now ? [now] : [])}
            text={now ? say(`screen.marks.${now}`) : ''}
          />
        </div>
        <ol class="marks-list">
          {marks.map((mark) => (
            <li key={mark}>
              <button
                type="button"
                class={`mark mark-${mark}`}
                aria-pressed={mark === now}
                onClick={() => setNow(mark)}
              >
                {say(`screen.marks.${mark}`)}
              </button>
            </li>
          ))}
        </ol>
        <p class="marks-care">{say('screen.marks.care')}</p>
      </div>
    </Page>
  );
}
