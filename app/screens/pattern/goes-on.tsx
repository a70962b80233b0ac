import type { Draft, OpeningRow } from '../../drafting/draft-types';
import { Gap, Icon, sayFirst, useWords } from '../../parts';

/** Whether it goes on and comes off: each part of the toy that must pass, and the tightest place on its way. */
export function GoesOn({ draft }: { readonly draft: Draft }) {
  const { say } = useWords();
  if (draft.openings.length === 0) return null;
  const rows = tightest(draft.openings);
  const all = rows.every(({ needs, gives }) => gives >= needs);
  return (
    <section class="told">
      <h2>{say(all ? 'screen.pattern.goes-on' : 'screen.pattern.goes-not')}</h2>
      <ul class="told-list">
        {rows.map(({ passes, through, needs, gives, closure }) => {
          const spare = gives - needs;
          return (
            <li key={passes} class={spare >= 0 ? 'passes' : 'stuck'}>
              <Icon name={spare >= 0 ? 'check' : 'warn'} />
              <span>
                <b>
                  {say('screen.pattern.through', {
                    part: say(`passes.${passes}`),
                    place: sayFirst(say, [`place.${through}`, through]),
                  })}
                </b>
                <Gap />
                {say(spare >= 0 ? 'screen.pattern.passes' : 'screen.pattern.stuck', { spare: Math.abs(spare) })}
                <Gap />
                <span class="soft">{sayFirst(say, [`closure.${closure}`, closure])}</span>
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** Of all that one part of the toy must pass, the place that leaves it the least room. */
function tightest(openings: readonly OpeningRow[]): readonly OpeningRow[] {
  const parts = [...new Set(openings.map(({ passes }) => passes))];
  return parts.flatMap((part) =>
    openings
      .filter(({ passes }) => passes === part)
      .sort((one, other) => one.gives - one.needs - (other.gives - other.needs))
      .slice(0, 1),
  );
}
