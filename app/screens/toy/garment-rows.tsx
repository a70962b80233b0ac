import { Icon, Picks, useWords } from '../../parts';
import { type Garment, setSetting } from '../../storage';
import { writtenDay } from '../../words';
import { Worn } from '../shared/dressed/worn';
import { usePhoto } from '../shared/face/toy-face';
import { Folded, RowLink } from '../shared/folded/folded';
import { useLiking } from '../shared/liking';
import { bodyOf, bodyShown } from '../shared/making/body-of';
import { to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';
import type { Known } from '../shared/with-toy';
import { orders, sorted } from './sorting';
import { useWhere } from './use-where';

/** So few need no sorting. */
const FEW = 3;

/** The wardrobe of a toy: what is being made, or was made, for it; what is put away folds. */
export function GarmentRows({ known }: { readonly known: Known }) {
  const { say, hand } = useWords();
  const { sorting } = useLiking();
  const attempt = useAttempt();
  const { garments, toy } = known;
  const here = garments.filter(({ awayAt }) => awayAt === undefined);
  const away = garments.filter(({ awayAt }) => awayAt !== undefined);
  const nameOf = (garment: Garment) => say(`garment.${garment.order.garment}.name`);
  const rows = (some: readonly Garment[]) => (
    <ul class="garment-rows">
      {sorted(some, sorting, nameOf, hand.locale).map((garment) => (
        <GarmentRow key={garment.id} known={known} garment={garment} />
      ))}
    </ul>
  );
  return (
    <section>
      <h2>{say('screen.toy.garments')}</h2>
      {garments.length > FEW && (
        <Picks
          legend={say('screen.wardrobe.sort')}
          quietLegend
          chosen={sorting}
          onPick={(order) => void attempt(() => setSetting('sorting', order))}
          picks={orders.map((value) => ({ value, words: say(`screen.wardrobe.by-${value}`) }))}
        />
      )}
      {rows(here)}
      {here.length > 1 && (
        <RowLink
          href={to('toy', toy.id, 'outfit')}
          title={say('screen.outfit.title')}
          stands={say('screen.outfit.stands')}
        />
      )}
      {away.length > 0 && (
        <Folded title={say('screen.wardrobe.away')} stands={say('screen.wardrobe.count', { count: away.length })}>
          {rows(away)}
        </Folded>
      )}
    </section>
  );
}

function GarmentRow({ known, garment }: { readonly known: Known; readonly garment: Garment }) {
  const { say, hand } = useWords();
  const whereOf = useWhere(known);
  const photo = usePhoto(garment.id, garment.changedAt);
  const { id, order, createdAt, made, note } = garment;
  const name = say(`garment.${order.garment}.name`);
  return (
    <li class="garment-row">
      <a href={whereOf(garment)}>
        {photo ? <img class="toy-photo" src={photo} alt="" /> : <Worn body={bodyShown(bodyOf(known))} order={order} />}
        <span>
          <b>{name}</b>
          <span class="soft small">
            {made
              ? say('screen.wardrobe.made', { day: writtenDay(made.at, hand.locale) })
              : writtenDay(createdAt, hand.locale)}
          </span>
          {note && <span class="garment-note small">{note}</span>}
        </span>
      </a>
      <a
        class="quiet round"
        href={to('toy', known.toy.id, id, 'kept')}
        aria-label={say('screen.wardrobe.about', { name })}
      >
        <Icon name="more" />
      </a>
    </li>
  );
}
