import type { Head } from '../../drafting/catalogue';
import { useWords } from '../../parts';
import type { Toy } from '../../storage';
import { Folded } from '../shared/folded/folded';
import { TraitPicks } from '../shared/looks/trait-picks';
import { traitsOf } from '../shared/looks/traits-of';

/** What of the toy's own looks this garment is cut by, folded: how it stands, to be changed where it is not so. */
export function FoldedLooks({ toy, row }: { readonly toy: Toy; readonly row: Head }) {
  const { say } = useWords();
  const read = traitsOf[toy.kind].filter((trait) => row.looks.includes(trait));
  if (read.length === 0) return null;
  const stands = read.map((trait) =>
    say('screen.theme.look', { name: say(`trait.${trait}.name`), value: say(`trait.${trait}.${toy.traits[trait]}`) }),
  );
  return (
    <Folded title={say('screen.theme.looks', { name: toy.name })} stands={stands.join(', ')}>
      <div class="theme">
        <p class="soft">{say('screen.choices.looks', { name: toy.name })}</p>
        {read.map((trait) => (
          <TraitPicks key={trait} toy={toy} trait={trait} />
        ))}
      </div>
    </Folded>
  );
}
