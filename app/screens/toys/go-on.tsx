import { Icon, sayFirst, useWords } from '../../parts';
import type { Place, Toy } from '../../storage';
import { ToyFace } from '../shared/face/toy-face';
import { useToy } from '../shared/keeping';
import { placeAddress } from '../shared/places';

/** The way back to where she was, the first thing under the thumb. */
export function GoOn({ toy, place }: { readonly toy: Toy; readonly place: Place }) {
  const { say } = useWords();
  const watched = useToy(toy.id);
  // An outfit's place names all its garments.
  const ids = place.garmentId?.split('+') ?? [];
  const orders =
    watched.state === 'here'
      ? watched.value.garments.filter(({ id }) => ids.includes(id)).map(({ order }) => order)
      : [];
  if (orders.length === 0) return null;
  const [screen = '', measure = ''] = place.step.split('/');
  const where =
    screen === 'measure' ? sayFirst(say, [`measure.${measure}.name`]) : sayFirst(say, [`screen.place.${screen}`, '']);
  return (
    <a class="go-on" href={placeAddress(place)}>
      <ToyFace toyId={toy.id} />
      <span class="go-on-words">
        <span class="go-on-title">{say('screen.toys.go-on', { name: toy.name })}</span>
        <span class="soft">{say('list.row', { of: orders.map(({ garment }) => say(`garment.${garment}.name`)) })}</span>
        <span class="soft">{where}</span>
      </span>
      <Icon name="on" />
    </a>
  );
}
