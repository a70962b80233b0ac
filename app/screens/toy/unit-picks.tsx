import { Picks, useWords } from '../../parts';
import { changeToy, type Toy } from '../../storage';
import { useAttempt } from '../shared/trouble/attempt';

const units = ['as-set', 'in', 'cm'] as const;

/** Inches or centimetres for this toy alone, whatever the others are measured in. */
export function UnitPicks({ toy }: { readonly toy: Toy }) {
  const { say } = useWords();
  const attempt = useAttempt();
  return (
    <Picks
      legend={say('screen.toy.unit')}
      chosen={toy.unit ?? 'as-set'}
      onPick={(value) =>
        void attempt(async () => void (await changeToy(toy.id, { unit: value === 'as-set' ? null : value })))
      }
      picks={units.map((value) => ({
        value,
        words: value === 'as-set' ? say('screen.toy.unit-as-set') : say(`screen.unit.${value}`),
      }))}
    />
  );
}
