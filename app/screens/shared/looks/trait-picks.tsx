import { type TraitId, type Traits, traitValues } from '../../../body';
import { Picks, TraitPicture, useWords } from '../../../parts';
import { changeToy, type Toy } from '../../../storage';
import { useAttempt } from '../trouble/attempt';

/** One thing of how a toy is built, by picture; kept as soon as it is picked. */
export function TraitPicks({ toy, trait }: { readonly toy: Toy; readonly trait: TraitId }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const pick = (chosen: string) =>
    attempt(async () => void (await changeToy(toy.id, { traits: withTrait(toy.traits, trait, chosen) })));
  return (
    <Picks
      legend={say(`trait.${trait}.name`)}
      chosen={String(toy.traits[trait])}
      onPick={pick}
      picks={traitValues[trait].map((value) => ({
        value: String(value),
        words: say(`trait.${trait}.${value}`),
        picture: <TraitPicture kind={toy.kind} trait={trait} value={value} looks={toy.traits} />,
      }))}
    />
  );
}

function withTrait(traits: Traits, trait: TraitId, chosen: string): Traits {
  const value = traitValues[trait].find((each) => String(each) === chosen);
  return value === undefined ? traits : { ...traits, [trait]: value };
}
