import { useState } from 'preact/hooks';
import { Page, useWords } from '../../parts';
import { Worn } from '../shared/dressed/worn';
import { bodyOf, bodyShown } from '../shared/making/body-of';
import { MOST_TOGETHER, outfitId } from '../shared/making/outfit';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { type Known, WithToy } from '../shared/with-toy';
import './outfit.css';

/** Which garments of a toy belong together: measured once, on the same paper. */
export function ChooseOutfitScreen({ params }: ScreenProps) {
  return <WithToy toyId={params.toy ?? ''}>{(known) => <ChoosePage known={known} />}</WithToy>;
}

function ChoosePage({ known }: { readonly known: Known }) {
  const { say } = useWords();
  const { toy } = known;
  const garments = known.garments.filter(({ awayAt }) => awayAt === undefined).toReversed();
  const [chosen, setChosen] = useState<readonly string[]>(garments.slice(0, 2).map(({ id }) => id));
  const body = bodyShown(bodyOf(known));
  const toggle = (id: string) =>
    setChosen(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  const together = garments.filter(({ id }) => chosen.includes(id));
  return (
    <Page
      title={say('screen.outfit.title')}
      back={to('toy', toy.id)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      acts={
        together.length > 1 && (
          <a class="go" href={to('toy', toy.id, outfitId(together), 'outfit')}>
            {say('screen.outfit.together', { count: together.length })}
          </a>
        )
      }
    >
      <p>{say('screen.outfit.which', { most: MOST_TOGETHER })}</p>
      <ul class="outfit-list">
        {garments.map(({ id, order }) => (
          <li key={id}>
            <label class="outfit-garment">
              <input
                type="checkbox"
                checked={chosen.includes(id)}
                disabled={!chosen.includes(id) && chosen.length >= MOST_TOGETHER}
                onChange={() => toggle(id)}
              />
              <Worn body={body} order={order} />
              <b>{say(`garment.${order.garment}.name`)}</b>
            </label>
          </li>
        ))}
      </ul>
    </Page>
  );
}
