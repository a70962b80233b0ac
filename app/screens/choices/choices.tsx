import { useState } from 'preact/hooks';
import { type Order, scaleOf } from '../../body';
import { type Offered, offered } from '../../drafting/catalogue';
import { Page, pictureBar, useWords } from '../../parts';
import { saveGarment } from '../../storage';
import { forPlayer } from '../shared/care/for-player';
import { DressedPanel } from '../shared/dressed/dressed-panel';
import { bodyShown } from '../shared/making/body-of';
import { DrawnHeard } from '../shared/making/drawn-heard';
import { type Making, onwardOf } from '../shared/making/making';
import { draftOf, useDraft } from '../shared/making/use-draft';
import { WithMaking } from '../shared/making/with-making';
import { usePlace } from '../shared/places';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { useAttempt } from '../shared/trouble/attempt';
import { AllowanceFields } from './allowances';
import { CarePicks } from './care-picks';
import { ChoicePicks } from './choice-picks';
import { ClothPicks, FitPicks } from './cloth-picks';
import { FoldedLooks } from './folded-looks';
import { FoldedTheme } from './folded-theme';
import { OverPicks } from './over-picks';
import { sorted } from './themes';
import { WayPicks } from './way-picks';
import './choices.css';

/** How the garment is to be: the toy in it, what decides most, and the rest folded away. Drawn anew with every change. */
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
  const body = bodyShown(making.body);
  const drawn = useDraft(body, order, toy.name);
  usePlace(toy.id, garment.id, 'choices');
  const replace = (changed: Order) => {
    setOrder(changed);
    void attempt(async () => void (await saveGarment(toy.id, changed, garment.id)));
  };
  const change = (more: Partial<Order>, left?: 'ownCloth') => {
    const { ownCloth: _, ...rest } = order;
    replace({ ...(left ? rest : order), ...more });
  };
  const { first, themes } = sorted(offered(row, order.choices));
  const picks = ({ name, choice, value }: Offered) => (
    <ChoicePicks
      key={name}
      choice={name}
      kind={choice}
      value={value}
      onChange={(chosen) => change({ choices: { ...order.choices, [name]: chosen } })}
    />
  );
  const onward = then === 'pattern' ? ['pattern'] : onwardOf(making);
  const whose = say('screen.making.whose', { name: toy.name, garment: say(`garment.${order.garment}.name`) });
  return (
    <Page
      wide
      title={say('screen.choices.title')}
      back={then === 'pattern' ? to('toy', toy.id, garment.id, 'pattern') : to('toy', toy.id)}
      whose={<a href={to('toy', toy.id)}>{whose}</a>}
      acts={
        <a class="go" href={to('toy', toy.id, garment.id, ...onward)}>
          {say(`screen.choices.to-${onward[0]}`)}
        </a>
      }
    >
      <DrawnHeard draft={draftOf(drawn)} />
      <div class="choices">
        <DressedPanel body={body} draft={draftOf(drawn)} busy={drawn.is === 'drawing'} text={whose} bar={pictureBar} />
        <div class="choices-list">
          {first.map(picks)}
          <FitPicks order={order} onChange={change} />
          <ClothPicks order={order} onChange={change} />
          <div class="themes">
            {themes.map((theme) => (
              <FoldedTheme key={theme.id} theme={theme} chosen={order.choices ?? {}}>
                {theme.choices.map(picks)}
                {theme.id === 'finish' && <AllowanceFields order={order} scale={scaleOf(body)} onChange={change} />}
              </FoldedTheme>
            ))}
            <FoldedLooks toy={toy} row={row} />
            <OverPicks
              row={row}
              order={order}
              onChange={(over) => {
                const { over: _, ...bare } = order;
                replace(over ? { ...bare, over } : bare);
              }}
            />
            <CarePicks
              toy={toy}
              onPlayer={(player) => {
                const suited = forPlayer(order, row, player);
                if (suited !== order) replace(suited);
              }}
            />
          </div>
          {then !== 'pattern' && <WayPicks making={making} />}
        </div>
      </div>
    </Page>
  );
}
