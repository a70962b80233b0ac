import { WithMaking } from '../shared/making/with-making';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { Trouble } from '../shared/trouble/trouble';
import { StepPage } from './step-page';
import { thenOf } from './then';

/** One measure, one screen. `?then=` names where to go afterwards when it was called up to be measured again. */
export function StepScreen({ params, query }: ScreenProps) {
  return (
    <WithMaking params={params} several>
      {(making) => {
        const asked = [...making.steps.map((step) => step.measure), ...making.worksOut, ...making.guessed];
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
