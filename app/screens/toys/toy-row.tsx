import { Icon, useWords } from '../../parts';
import type { Toy } from '../../storage';
import { ToyFace } from '../shared/face/toy-face';
import { useToy } from '../shared/keeping';
import { to } from '../shared/route';

/** One toy of the list: its face, its name, and what is being made for it. */
export function ToyRow({ toy }: { readonly toy: Toy }) {
  const { say } = useWords();
  const watched = useToy(toy.id);
  const value = watched.state === 'here' ? watched.value : undefined;
  const taken = value ? Object.keys(value.readings).length : 0;
  const names = [...new Set(value?.garments.map((garment) => say(`garment.${garment.order.garment}.name`)))];
  return (
    <a class="toy-row" href={to('toy', toy.id)}>
      <ToyFace toyId={toy.id} />
      <span class="toy-row-words">
        <b>{toy.name}</b>
        <span class="soft small">
          {names.length > 0 ? say('list.row', { of: names }) : say('screen.toys.measures', { count: taken })}
        </span>
      </span>
      <Icon name="on" />
    </a>
  );
}
