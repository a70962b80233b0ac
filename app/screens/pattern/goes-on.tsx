import type { Draft } from '../../drafting/draft-types';
import { Icon, sayFirst, shownLength, useWords } from '../../parts';

/** Whether it goes on and comes off: what must pass, what it passes through, and by what closure. */
export function GoesOn({ draft }: { readonly draft: Draft }) {
  const { say, hand } = useWords();
  if (draft.openings.length === 0) return null;
  return (
    <section class="told">
      <h2>{say('screen.pattern.goes-on')}</h2>
      <ul class="told-list">
        {draft.openings.map((opening) => {
          const passes = opening.gives >= opening.needs;
          const values = { needs: shownLength(opening.needs, hand), gives: shownLength(opening.gives, hand) };
          return (
            <li key={opening.through} class={passes ? 'passes' : 'stuck'}>
              <Icon name={passes ? 'check' : 'warn'} />
              <span>
                <b>{sayFirst(say, [`place.${opening.through}`, opening.through])}</b>{' '}
                {say(passes ? 'screen.pattern.passes' : 'screen.pattern.stuck', values)}{' '}
                <span class="soft">{sayFirst(say, [`closure.${opening.closure}`, opening.closure])}</span>
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
