import type { Draft } from '../../drafting/draft-types';
import { Gap, sayFirst, useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import type { Making } from '../shared/making/making';
import { NumbersAgain } from './numbers-again';

type ChangedProps = { readonly draft: Draft; readonly making: Making };

/** What was changed so that the seams meet, each with its reason and the numbers it was measured from. */
export function Changed({ draft: { adjustments }, making }: ChangedProps) {
  const { say } = useWords();
  const title = say('screen.pattern.changed', { name: making.toy.name });
  if (adjustments.length === 0)
    return (
      <p class="pattern-same">
        <b>{title}</b>
        <Gap />
        <span class="soft">{say('screen.pattern.as-measured')}</span>
      </p>
    );
  return (
    <Folded title={title} stands={say('screen.pattern.changes', { count: adjustments.length })}>
      <ul class="told-list">
        {adjustments.map((adjustment, index) => (
          <li key={index}>
            {sayFirst(say, [`adjustment.${adjustment.code}`, 'adjustment.other'], { by: Math.abs(adjustment.by) })}
            <Gap />
            <span class="soft">{sayFirst(say, [`because.${adjustment.because}`, ''])}</span>
            <NumbersAgain measures={adjustment.check} making={making} />
          </li>
        ))}
      </ul>
    </Folded>
  );
}
