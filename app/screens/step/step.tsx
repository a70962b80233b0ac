import type { MeasureId } from '../../body';
import type { Making } from '../making';
import { to } from '../route';
import type { ScreenProps } from '../shell/screens';
import { Trouble } from '../shell/trouble';
import { WithMaking } from '../with-making';
import { StepPage } from './step-page';

/** One measure, one screen. `?then=` names where to go afterwards when it was called up to be measured again. */
export function StepScreen({ params, query }: ScreenProps) {
  return (
    <WithMaking params={params}>
      {(making) => {
        const asked = [...making.steps.map((step) => step.measure), ...making.worksOut];
        const measure = asked.find((each) => each === params.measure);
        if (!measure)
          return (
            <Trouble
              code="step-gone"
              act={{
                words: 'screen.trouble.review',
                run: () => location.replace(to('toy', making.toy.id, making.garment.id, 'review')),
              }}
            />
          );
        return <StepPage making={making} measure={measure} then={thenOf(making, query.get('then'))} />;
      }}
    </WithMaking>
  );
}

/** Where a step that was called up leads back to: the review, the pattern, or the step that called it. */
export type Then = {
  readonly address: string;
  readonly measure?: MeasureId;
  readonly screen?: 'review' | 'pattern';
} | null;

function thenOf({ toy, garment, steps }: Making, wanted: string | null): Then {
  if (wanted === 'review' || wanted === 'pattern')
    return { screen: wanted, address: to('toy', toy.id, garment.id, wanted) };
  const step = steps.find(({ measure }) => measure === wanted);
  return step ? { measure: step.measure, address: to('toy', toy.id, garment.id, 'measure', step.measure) } : null;
}
