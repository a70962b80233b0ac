import { usualTraits } from '../../body';
import type { Head } from '../../drafting/catalogue';
import { TraitPicture, useWords } from '../../parts';
import type { Toy } from '../../storage';
import { Folded } from '../shared/folded/folded';
import { TraitPicks } from '../shared/looks/trait-picks';
import { traitsOf } from '../shared/looks/traits-of';

/** What of the toy's own looks this garment is cut by, folded: what is not as on most toys, to be changed where it is not so. */
export function FoldedLooks({ toy, row }: { readonly toy: Toy; readonly row: Head }) {
  const { say } = useWords();
  const { kind, traits } = toy;
  const read = traitsOf[kind].filter((trait) => row.looks.includes(trait));
  const own = read.filter((trait) => traits[trait] !== usualTraits[trait]);
  const [shown] = own.length > 0 ? own : read;
  if (!shown) return null;
  const stands = own.map((trait) =>
    say('screen.theme.look', { name: say(`trait.${trait}.name`), value: say(`trait.${trait}.${traits[trait]}`) }),
  );
  return (
    <Folded
      picture={<TraitPicture kind={kind} trait={shown} value={traits[shown]} looks={traits} />}
      title={say('screen.theme.looks')}
      stands={own.length > 0 ? say('list.row', { of: stands }) : say('screen.theme.like-most')}
    >
      <div class="theme">
        <p class="soft">{say('screen.choices.looks')}</p>
        {read.map((trait) => (
          <TraitPicks key={trait} toy={toy} trait={trait} />
        ))}
      </div>
    </Folded>
  );
}
