import { type BodyKind, usualTraits } from '../../body';
import { Picks, Portrait, useWords, WayPage } from '../../parts';
import { changeToy } from '../../storage';
import { kindsDressed, kindsWithLittle, useGarments } from '../shared/making/garments-known';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { WithToy } from '../shared/with-toy';

/** What kind of body, by picture. */
export function KindScreen({ params, query }: ScreenProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const garments = useGarments();
  return (
    <WithToy toyId={params.toy ?? ''}>
      {({ toy }) => {
        const pick = (kind: BodyKind) => attempt(async () => void (await changeToy(toy.id, { kind })));
        const editing = query.has('edit');
        const few = kindsWithLittle(garments ?? []);
        const noteOf = (kind: BodyKind) => {
          const count = few.get(kind);
          const note = say(`body.${kind}.note`);
          return count === undefined ? note : say('list.after', { one: note, two: say('screen.kind.few', { count }) });
        };
        return (
          <WayPage
            title={say('screen.kind.title')}
            back={to('toy', toy.id)}
            whose={toy.name}
            {...(editing ? {} : { progress: { done: 2, all: 3 } })}
            acts={
              <a class="go" href={editing ? to('toy', toy.id) : to('toy', toy.id, 'looks')}>
                {say(editing ? 'screen.done' : 'screen.next')}
              </a>
            }
          >
            <p class="soft">{say('screen.kind.what')}</p>
            <Picks
              large
              quietLegend
              legend={say('screen.kind.title')}
              chosen={toy.kind}
              onPick={pick}
              picks={kindsDressed(garments ?? []).map((kind) => ({
                value: kind,
                words: say(`body.${kind}.name`),
                note: noteOf(kind),
                picture: <Portrait body={{ kind, traits: usualTraits, sizes: {} }} />,
              }))}
            />
          </WayPage>
        );
      }}
    </WithToy>
  );
}
