import { Gap, Icon, Page, useWords } from '../../parts';
import { type Made, saveGarment, type Toy, wallClock } from '../../storage';
import { madeOf } from '../shared/again/made';
import { ToyFace } from '../shared/face/toy-face';
import { useToy, useToys } from '../shared/keeping';
import { bodyOf } from '../shared/making/body-of';
import { bodyKnown, type Making } from '../shared/making/making';
import { leftWords, numbersLeft } from '../shared/making/numbers-left';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithMaking } from '../shared/making/with-making';
import { go, to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import './again.css';

/** The same garment once more: for this toy by today's numbers, or for another by its own. */
export function AgainScreen({ params }: ScreenProps) {
  return <WithMaking params={params}>{(making) => <AgainPage making={making} />}</WithMaking>;
}

function AgainPage({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, row } = making;
  const toys = useToys();
  const draft = draftOf(useDraft(bodyKnown(making), garment.order, toy.name));
  const like = garment.made ?? (draft ? madeOf(draft, making, wallClock()) : undefined);
  const others = toys.state === 'here' ? toys.value.toys.filter(({ id }) => id !== toy.id) : [];
  const suited = others.filter(({ kind }) => row.bodies.includes(kind));
  const name = say(`garment.${garment.order.garment}.name`);
  return (
    <Page
      title={say('screen.again.title')}
      back={to('toy', toy.id, garment.id, 'kept')}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={name}
    >
      <p>{say('screen.again.what')}</p>
      <ul class="again-toys">
        {[toy, ...suited].map((each) => (
          <li key={each.id}>
            <ForToy toy={each} making={making} like={like} />
          </li>
        ))}
      </ul>
      <p class="soft">
        {say('screen.again.friend')} <a href={to('card')}>{say('screen.again.card')}</a>
      </p>
    </Page>
  );
}

type ForToyProps = { readonly toy: Toy; readonly making: Making; readonly like: Made | undefined };

/** A toy it may be made for, and how many of its numbers are still to be taken. */
function ForToy({ toy, making: { garment, row, toy: own }, like }: ForToyProps) {
  const { say } = useWords();
  const attempt = useAttempt();
  const watched = useToy(toy.id);
  const readings = watched.state === 'here' ? watched.value.readings : null;
  const { date: _, ...order } = garment.order;
  const left = readings && numbersLeft(row, toy, bodyOf({ toy, readings }), { order });
  const make = () =>
    attempt(async () => {
      const { id } = await saveGarment(toy.id, order, undefined, like);
      go(to('toy', toy.id, id, left?.firm === 0 ? 'pattern' : 'choices'));
    });
  return (
    <button type="button" class="again-toy" disabled={!left} onClick={make}>
      <ToyFace toyId={toy.id} />
      <span>
        <b>{toy.name}</b>
        <span class="soft small">
          {toy.id === own.id && say('screen.again.own')}
          <Gap />
          {left && (left.firm === 0 ? say('screen.garments.no-more') : leftWords(say, 'screen.again.left', left))}
        </span>
      </span>
      <Icon name="on" />
    </button>
  );
}
