import { Icon, Page, useWords } from '../../parts';
import { changeGarment, type Made, removeGarment, wallClock } from '../../storage';
import { madeOf } from '../shared/again/made';
import { SinceList } from '../shared/again/since-list';
import { useSince } from '../shared/again/use-since';
import { Worn } from '../shared/dressed/worn';
import { PhotoActs } from '../shared/face/photo-acts';
import { usePhoto } from '../shared/face/toy-face';
import { bodyShown } from '../shared/making/body-of';
import { bodyKnown, type Making } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithMaking } from '../shared/making/with-making';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { useNotice } from '../shared/trouble/notice';
import { useUndo } from '../shared/trouble/undo';
import { NoteField } from './note-field';
import '../shared/more-acts.css';
import './kept.css';

/** One garment in the wardrobe: its photo, what fitted, what has changed since it was made, and the way to make it again. */
export function KeptScreen({ params }: ScreenProps) {
  return <WithMaking params={params}>{(making) => <KeptPage making={making} />}</WithMaking>;
}

function KeptPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment } = making;
  const draft = draftOf(useDraft(bodyKnown(making), garment.order, toy.name));
  const compared = useSince(draft, making);
  const photo = usePhoto(garment.id, garment.changedAt);
  const whose = say('screen.making.whose', { name: toy.name, garment: say(`garment.${garment.order.garment}.name`) });
  const here = (screen: string) => to('toy', toy.id, garment.id, screen);
  return (
    <Page
      wide
      title={whose}
      back={to('toy', toy.id)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      acts={
        <>
          <a class="plain" href={here('pattern')}>
            {say('screen.kept.pattern')}
          </a>
          <a class="go" href={here('again')}>
            <Icon name="again" />
            {say('screen.kept.again')}
          </a>
        </>
      }
    >
      <div class="columns">
        <div class="column">
          <div class="kept-top">
            {photo ? (
              <img class="kept-photo" src={photo} alt={whose} />
            ) : (
              <span class="kept-worn">
                <Worn body={bodyShown(making.body)} order={garment.order} />
              </span>
            )}
            <PhotoActs of={garment.id} changedAt={garment.changedAt} touch={() => changeGarment(garment.id, {})} />
          </div>
          <NoteField garment={garment} />
        </div>
        <div class="column">
          <section>
            <h2>
              {compared
                ? say(compared.anothers ? 'screen.since.beside' : 'screen.since.title', { before: compared.before })
                : say('screen.kept.not-made')}
            </h2>
            {compared ? (
              <SinceList since={compared.since} before={compared.before} />
            ) : (
              <p>{say('screen.kept.once-made')}</p>
            )}
          </section>
          <KeptActs making={making} made={draft && !garment.made ? madeOf(draft, making, wallClock()) : null} />
        </div>
      </div>
    </Page>
  );
}

type KeptActsProps = {
  readonly making: Making /** As it stands, where it is not remembered yet. */;
  readonly made: Made | null;
};

/** Made without our paper, out of the way, or out of the house. */
function KeptActs({ making: { toy, garment }, made }: KeptActsProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  const backTo = useUndo();
  const name = say(`garment.${garment.order.garment}.name`);
  const away = garment.awayAt !== undefined;
  const putAway = () => attempt(() => changeGarment(garment.id, { awayAt: away ? null : wallClock() }));
  const remove = () =>
    attempt(async () => {
      const undo = await removeGarment(garment.id);
      go(to('toy', toy.id), 'replace');
      notice({
        words: say('screen.toy.garment-removed', { name }),
        act: backTo(undo, name),
      });
    });
  return (
    <ul class="more-acts">
      {made && (
        <li>
          <button type="button" class="quiet" onClick={() => attempt(() => changeGarment(garment.id, { made }))}>
            <Icon name="scissors" />
            {say('screen.kept.remember')}
          </button>
        </li>
      )}
      <li>
        <button type="button" class="quiet" onClick={putAway}>
          <Icon name={away ? 'back' : 'check'} />
          {say(away ? 'screen.kept.bring-back' : 'screen.kept.put-away')}
        </button>
      </li>
      <li>
        <button type="button" class="quiet warn" onClick={remove}>
          <Icon name="bin" />
          {say('screen.toy.remove-garment', { name })}
        </button>
      </li>
    </ul>
  );
}
