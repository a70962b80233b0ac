import type { View } from '../../body';
import type { Step } from '../../measuring';
import { Icon, Page, shownLength, useWords } from '../../parts';
import { printNumbers } from '../../work/bridge';
import { afterTape, type Making, marksOpen, measureOf, tapedOf, wishesOf } from '../shared/making/making';
import { leftWords, stepsLeft } from '../shared/making/numbers-left';
import { chosenAddress, makingWords } from '../shared/making/outfit';
import { WithMaking } from '../shared/making/with-making';
import { PdfAct, ReadAct } from '../shared/pdf-act';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { sheetOf } from './sheet-of';
import './steps.css';

/** Every step of measuring, to jump about in: what is taken, what is left; and the way without the phone. */
export function StepsScreen({ params, query }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => <StepsPage making={making} from={query.get('from')} />}
    </WithMaking>
  );
}

const views: readonly View[] = ['front', 'side', 'back'];

function StepsPage({ making, from }: { readonly making: Making; readonly from: string | null }) {
  const { say } = useWords();
  const { toy, garment, steps } = making;
  const address = (...parts: readonly string[]) => to('toy', toy.id, garment.id, ...parts);
  const taped = tapedOf(steps);
  const here = taped.find(({ measure }) => measure === from)?.measure;
  const left = stepsLeft(making);
  const [next = '', measure] = measureOf(making);
  const name = makingWords(say, making);
  const file = [toy.name, name, say('screen.steps.file')].join(' ');
  return (
    <Page
      wide
      title={say('screen.steps.title')}
      back={here ? address('measure', here) : chosenAddress(making)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={name}
      acts={
        <a class="go" href={address(next, ...(measure ? [measure] : []))}>
          {measure
            ? say('screen.steps.next', { name: say(`measure.${measure}.name`) })
            : say(`screen.choices.to-${afterTape(making)}`)}
        </a>
      }
    >
      <p class="soft">
        {left.count === 0 ? say('screen.garments.no-more') : leftWords(say, 'screen.steps.short', left)}
      </p>
      <div class="columns">
        <div class="column">
          {left.count > 0 && marksOpen(making).length > 0 && (
            <a class="step-row" href={address('marks')}>
              <span class="step-row-tick" />
              {say('screen.place.marks')}
            </a>
          )}
          {views.map((view) => (
            <ViewSteps
              key={view}
              making={making}
              view={view}
              steps={taped.filter((step) => step.view === view)}
              here={here}
            />
          ))}
          {wishesOf(steps).length > 0 && (
            <a class="step-row" href={address('wishes')}>
              <span class="step-row-tick" />
              {say('screen.place.wishes')}
            </a>
          )}
        </div>
        <section class="slip">
          <h2>{say('screen.steps.away')}</h2>
          <p>{say('screen.steps.away-how')}</p>
          <div class="slip-acts">
            <PdfAct
              words={say('screen.steps.sheet')}
              name={file}
              make={(asked) => printNumbers(sheetOf(making), asked)}
            />
            <ReadAct name={file} what={() => ({ of: 'numbers', sheet: sheetOf(making) })} />
            <a class="plain" href={address('typed')}>
              <Icon name="pencil" />
              {say('screen.steps.type')}
            </a>
          </div>
        </section>
      </div>
    </Page>
  );
}

type ViewStepsProps = {
  readonly making: Making;
  readonly view: View;
  readonly steps: readonly Step[];
  readonly here: string | undefined;
};

/** The steps taken from one side of the toy. */
function ViewSteps({ making, view, steps, here }: ViewStepsProps) {
  const { say, hand } = useWords();
  const { toy, garment, readings, body } = making;
  if (steps.length === 0) return null;
  return (
    <section>
      <h2 class="steps-view">{say(`screen.steps.${view}`)}</h2>
      <ol>
        {steps.map(({ measure }) => {
          const taken = readings[measure] ? body.sizes[measure] : undefined;
          return (
            <li key={measure}>
              <a
                class="step-row"
                href={to('toy', toy.id, garment.id, 'measure', measure)}
                aria-current={measure === here ? 'step' : undefined}
              >
                <span class="step-row-tick">{taken && <Icon name="check" />}</span>
                <span>{say(`measure.${measure}.name`)}</span>
                <b class="step-row-value">{taken ? shownLength(taken.value, hand) : ''}</b>
              </a>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
