import type { Draft } from '../../drafting/draft-types';
import { sayFirst, useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';

/** What was changed so that the seams meet, each with its reason. */
export function Changed({ draft: { adjustments }, name }: { readonly draft: Draft; readonly name: string }) {
  const { say } = useWords();
  const title = say('screen.pattern.changed', { name });
  if (adjustments.length === 0)
    return (
      <p class="pattern-same">
        <b>{title}</b> <span class="soft">{say('screen.pattern.as-measured')}</span>
      </p>
    );
  return (
    <Folded title={title} stands={say('screen.pattern.changes', { count: adjustments.length })}>
      <ul class="told-list">
        {adjustments.map((adjustment, index) => (
          <li key={index}>
            {sayFirst(say, [`adjustment.${adjustment.code}`, 'adjustment.other'], { by: Math.abs(adjustment.by) })}{' '}
            <span class="soft">{sayFirst(say, [`because.${adjustment.because}`, ''])}</span>
          </li>
        ))}
      </ul>
    </Folded>
  );
}
