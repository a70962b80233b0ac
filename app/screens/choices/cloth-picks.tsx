import { useState } from 'preact/hooks';
import type { Order, OwnCloth } from '../../body';
import { cloths, fitIds, USUAL_CLOTH, usualFit } from '../../drafting/catalogue';
import { ChoicePicture, ClothPicture, Picks, useWords } from '../../parts';
import { forgetCloth, type KeptCloth, keepCloth, ownCloths } from '../../storage';
import { useSettings } from '../shared/keeping';
import { useAttempt } from '../shared/trouble/attempt';
import { OwnClothFields } from './own-cloth-fields';

type Change = (more: Partial<Order>, left?: 'ownCloth') => void;
type OrderProps = { readonly order: Order; readonly onChange: Change };

/** How loosely it sits. */
export function FitPicks({ order, onChange }: OrderProps) {
  const { say } = useWords();
  return (
    <Picks
      legend={say('fit.name')}
      chosen={order.fit ?? usualFit(order.choices)}
      onPick={(fit) => onChange({ fit })}
      picks={fitIds.map((id) => ({
        value: id,
        words: say(`fit.${id}`),
        picture: <ChoicePicture choice="fit" value={id} />,
      }))}
    />
  );
}

/** What it is sewn from, one of the usual cloths or of her own: how much it stretches and how thick it is are in the drawing. */
export function ClothPicks({ order, onChange }: OrderProps) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const settings = useSettings();
  const kept = settings.state === 'here' ? ownCloths(settings.value, hand.locale) : [];
  const like = order.cloth ?? USUAL_CLOTH;
  const own = order.ownCloth;
  const chosen = own && kept.find((each) => each.like === like && isSame(each, own));
  // A friend's own cloth came with her order.
  const theirs = own && !chosen ? [{ ...own, like, id: '' }] : [];
  const [shown, setShown] = useState(0);
  const choose = ({ like, name, stretch, thickness }: Omit<KeptCloth, 'id'>) =>
    onChange({ cloth: like, ownCloth: { name, stretch, thickness } });
  const keep = (cloth: OwnCloth) =>
    attempt(async () => {
      choose(
        await keepCloth({
          ...cloth,
          like,
          ...(chosen ? { id: chosen.id } : {}),
        }),
      );
      setShown(shown + 1);
    });
  const forget = ({ id }: KeptCloth) =>
    attempt(async () => {
      await forgetCloth(id);
      onChange({ cloth: like }, 'ownCloth');
    });
  const ours = [...kept, ...theirs];
  return (
    <div>
      <Picks
        legend={say('cloth.name')}
        chosen={own ? ownValue(chosen?.id ?? '') : like}
        onPick={(picked) => {
          const mine = ours.find(({ id }) => ownValue(id) === picked);
          if (mine) choose(mine);
          else onChange({ cloth: picked }, 'ownCloth');
        }}
        picks={[
          ...cloths.map(({ id }) => ({
            value: id,
            words: say(`cloth.${id}`),
            picture: <ClothPicture id={id} />,
          })),
          ...ours.map(({ id, like, name }) => ({
            value: ownValue(id),
            words: name,
            picture: <ClothPicture id={like} />,
          })),
        ]}
      />
      <OwnClothFields
        key={`${like} ${chosen?.id ?? own?.name} ${shown}`}
        like={like}
        own={own}
        onKeep={(cloth) => void keep(cloth)}
        onForget={chosen ? () => void forget(chosen) : undefined}
      />
    </div>
  );
}

/** No preset has a space in its name. */
const ownValue = (id: string) => `own ${id}`;

const isSame = (a: OwnCloth, b: OwnCloth) =>
  a.name === b.name && a.stretch === b.stretch && a.thickness === b.thickness;
