import type { Order } from '../../body';
import { cloths, fitIds, USUAL_CLOTH, USUAL_FIT } from '../../drafting/catalogue';
import { ChoicePicture, ClothPicture, Picks, useWords } from '../../parts';

type OrderProps = { readonly order: Order; readonly onChange: (more: Partial<Order>) => void };

/** How loosely it sits. */
export function FitPicks({ order, onChange }: OrderProps) {
  const { say } = useWords();
  return (
    <Picks
      legend={say('fit.name')}
      chosen={order.fit ?? USUAL_FIT}
      onPick={(fit) => onChange({ fit })}
      picks={fitIds.map((id) => ({
        value: id,
        words: say(`fit.${id}`),
        picture: <ChoicePicture choice="fit" value={id} />,
      }))}
    />
  );
}

/** What it is sewn from: how much it stretches and how thick it is are in the drawing. */
export function ClothPicks({ order, onChange }: OrderProps) {
  const { say } = useWords();
  return (
    <Picks
      legend={say('cloth.name')}
      chosen={order.cloth ?? USUAL_CLOTH}
      onPick={(cloth) => onChange({ cloth })}
      picks={cloths.map(({ id }) => ({ value: id, words: say(`cloth.${id}`), picture: <ClothPicture id={id} /> }))}
    />
  );
}
