import { useState } from 'preact/hooks';
import { type MarkId, markPicture } from '../../measuring';
import { FigurePicture, Page, TapeLine, useWords } from '../../parts';
import { type Making, marksShown, measureOf } from '../shared/making/making';
import { chosenAddress, makingWords } from '../shared/making/outfit';
import { StepsLeft } from '../shared/making/steps-left';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import './marks.css';

/** Step zero, never skipped: threads and bits of tape that the steps speak of. */
export function MarksScreen({ params }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => <MarksPage making={making} />}
    </WithMaking>
  );
}

function MarksPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, body, screens } = making;
  const marks = marksShown(making);
  const [now, setNow] = useState<MarkId | undefined>(marks[0]);
  usePlace(toy.id, garment.id, 'marks');
  return (
    <Page
      title={say('screen.marks.title')}
      back={chosenAddress(making)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={makingWords(say, making)}
      under={<TapeLine done={0} all={screens} />}
      end={<StepsLeft making={making} />}
      acts={
        <a class="go" href={to('toy', toy.id, garment.id, ...measureOf(making))}>
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
