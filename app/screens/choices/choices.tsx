import { useState } from 'preact/hooks';
import { type Order, scaleOf } from '../../body';
import { offered } from '../../drafting/catalogue';
import { Page, useWords } from '../../parts';
import { saveGarment } from '../../storage';
import { bodyKnown, type Making, onwardOf } from '../shared/making/making';
import { useDraft } from '../shared/making/use-draft';
import { WithMaking } from '../shared/making/with-making';
import { PiecesStrip } from '../shared/pieces/pieces-strip';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { AllowanceFields } from './allowances';
import { ChoicePicks } from './choice-picks';
import { ClothPicks, FitPicks } from './cloth-picks';
import { WayPicks } from './way-picks';
import './choices.css';

/** How the garment is to be: fit, cloth, and what the garment itself leaves open. Drawn anew with every change. */
export function ChoicesScreen({ params, query }: ScreenProps) {
  return (
    <WithMaking params={params}>{(making) => <ChoicesPage making={making} then={query.get('then')} />}</WithMaking>
  );
}

function ChoicesPage({ making, then }: { readonly making: Making; readonly then: string | null }) {
  const { say } = useWords();
  const { toy, garment, row } = making;
  const attempt = useAttempt();
  const [order, setOrder] = useState<Order>(garment.order);
  const drawn = useDraft(bodyKnown(making), order, toy.name);
  usePlace(toy.id, garment.id, 'choices');
  const change = (more: Partial<Order>) => {
    const changed = { ...order, ...more };
    setOrder(changed);
    void attempt(async () => void (await saveGarment(toy.id, changed, garment.id)));
  };
  const onward = then === 'pattern' ? ['pattern'] : onwardOf(making);
  const name = say(`garment.${order.garment}.name`);
  return (
    <Page
      wide
      title={say('screen.choices.title', { garment: name })}
      back={then === 'pattern' ? to('toy', toy.id, garment.id, 'pattern') : to('toy', toy.id)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={name}
      acts={
        <a class="go" href={to('toy', toy.id, garment.id, ...onward)}>
          {say(`screen.choices.to-${onward[0]}`)}
        </a>
      }
    >
      <div class="choices">
        <PiecesStrip drawn={drawn} />
        <div class="choices-list">
          <p class="soft">{say('screen.choices.what')}</p>
          <FitPicks order={order} onChange={change} />
          <ClothPicks order={order} onChange={change} />
          {offered(row, order.choices).map(({ name: choice, choice: kind, value: chosen }) => (
            <ChoicePicks
              key={choice}
              choice={choice}
              kind={kind}
              value={chosen}
              onChange={(value) => change({ choices: { ...order.choices, [choice]: value } })}
            />
          ))}
          {then !== 'pattern' && <WayPicks making={making} />}
          <AllowanceFields order={order} scale={scaleOf(making.body)} onChange={change} />
        </div>
      </div>
    </Page>
  );
}
