import { figure } from '../../measuring';
import { FigurePicture, Page, useWords } from '../../parts';
import { type Making, nextStep } from '../making';
import { usePlace } from '../places';
import { to } from '../route';
import type { ScreenProps } from '../shell/screens';
import { WithMaking } from '../with-making';
import './marks.css';

/** What to mark on the toy, by what it has. */
const marks = ['neck', 'waist', 'shoulders', 'underarms', 'sides'] as const;

/** Step zero, never skipped: threads and bits of tape that the steps speak of. */
export function MarksScreen({ params }: ScreenProps) {
  return <WithMaking params={params}>{(making) => <MarksPage making={making} />}</WithMaking>;
}

function MarksPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, body, steps, readings } = making;
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
            figure={figure(toy.kind, toy.traits, body.sizes, 'front')}
            text={say('screen.marks.picture')}
          />
        </div>
        <ol class="marks-list">
          {marks.map((mark) => (
            <li key={mark} class={`mark mark-${mark}`}>
              {say(`screen.marks.${mark}`)}
            </li>
          ))}
        </ol>
        <p class="marks-care">{say('screen.marks.care')}</p>
      </div>
    </Page>
  );
}
