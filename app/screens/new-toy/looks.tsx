import { useWords, WayPage } from '../../parts';
import { TraitPicks } from '../shared/looks/trait-picks';
import { traitsOf } from '../shared/looks/traits-of';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { WithToy } from '../shared/with-toy';

/** How this toy is built, by picture; whatever is left alone is as most toys are. */
export function LooksScreen({ params, query }: ScreenProps) {
  const { say } = useWords();
  const editing = query.has('edit');
  return (
    <WithToy toyId={params.toy ?? ''}>
      {({ toy }) => (
        <WayPage
          wide
          title={say('screen.looks.title')}
          back={editing ? to('toy', toy.id) : to('toy', toy.id, 'kind')}
          whose={toy.name}
          {...(editing ? {} : { progress: { done: 3, all: 3 } })}
          acts={
            <a class="go" href={editing ? to('toy', toy.id) : to('toy', toy.id, 'make')}>
              {say(editing ? 'screen.done' : 'screen.looks.next')}
            </a>
          }
        >
          <p class="soft">{say('screen.looks.what')}</p>
          <div class="looks">
            {traitsOf[toy.kind].map((trait) => (
              <TraitPicks key={trait} toy={toy} trait={trait} />
            ))}
          </div>
        </WayPage>
      )}
    </WithToy>
  );
}
