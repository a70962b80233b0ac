import type { ComponentChildren } from 'preact';
import type { ScreenProps } from '../screen-props';
import { lackingOf } from './lacking';
import { LackingPage } from './lacking-page';
import type { Making } from './making';
import { WithMaking } from './with-making';

type WithPatternProps = Pick<ScreenProps, 'params'> & {
  readonly several?: boolean;
  readonly children: (making: Making) => ComponentChildren;
};

/** A garment under way whose numbers are firm enough to draw it from; else what to measure first. */
export function WithPattern({ params, several = false, children }: WithPatternProps) {
  return (
    <WithMaking params={params} several={several}>
      {(making) => {
        const lacking = lackingOf(making);
        return lacking ? <LackingPage making={making} lacking={lacking} /> : children(making);
      }}
    </WithMaking>
  );
}
