import { type TraitId, type Traits, traitValues } from '../../body';
import { Page, Picks, TraitPicture, useWords } from '../../parts';
import { changeToy, type Toy } from '../../storage';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { WithToy } from '../shared/with-toy';
import { traitsOf } from './kinds';

/** How this toy is built, by picture; whatever is left alone is as most toys are. */
export function LooksScreen({ params, query }: ScreenProps) {
  const { say } = useWords();
  const editing = query.has('edit');
  return (
    <WithToy toyId={params.toy ?? ''}>
      {({ toy }) => (
        <Page
          wide
          title={say('screen.looks.title', { name: toy.name })}
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
        </Page>
      )}
    </WithToy>
  );
}

function TraitPicks({ toy, trait }: { readonly toy: Toy; readonly trait: TraitId }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const pick = (chosen: string) =>
    attempt(async () => void (await changeToy(toy.id, { traits: withTrait(toy.traits, trait, chosen) })));
  return (
    <Picks
      legend={say(`trait.${trait}.name`)}
      chosen={String(toy.traits[trait])}
      onPick={pick}
      picks={traitValues[trait].map((value) => ({
        value: String(value),
        words: say(`trait.${trait}.${value}`),
        picture: <TraitPicture kind={toy.kind} trait={trait} value={value} />,
      }))}
    />
  );
}

function withTrait(traits: Traits, trait: TraitId, chosen: string): Traits {
  const value = traitValues[trait].find((each) => String(each) === chosen);
  return value === undefined ? traits : { ...traits, [trait]: value };
}
