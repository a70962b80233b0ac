import type { Choice } from '../../drafting/catalogue';
import { ChoicePicture, hasPictures, Picks, sayFirst, useWords } from '../../parts';
import { AmountField } from '../shared/making/amount-field';

type ChoicePicksProps = {
  readonly choice: string;
  readonly kind: Choice;
  readonly value: string | boolean | number;
  readonly onChange: (value: string | boolean | number) => void;
};

/** One choice of a garment, whatever its kind: pictures, yes or no, or an amount. */
export function ChoicePicks({ choice, kind, value, onChange }: ChoicePicksProps) {
  const { say } = useWords();
  const legend = say(`choice.${choice}.name`);
  if (kind.kind !== 'one' && kind.kind !== 'yes')
    return <AmountField legend={legend} kind={kind} value={Number(value)} onChange={onChange} />;
  const values = kind.kind === 'one' ? kind.of : ['true', 'false'];
  const drawn = hasPictures(choice, values);
  const words = (each: string) =>
    sayFirst(say, [
      `choice.${choice}.${each}`,
      kind.kind === 'yes' ? `screen.choices.${each}` : `choice.${choice}.${each}`,
    ]);
  return (
    <Picks
      legend={legend}
      chosen={String(value)}
      onPick={(picked) => onChange(kind.kind === 'yes' ? picked === 'true' : picked)}
      picks={values.map((each) => ({
        value: each,
        words: words(each),
        picture: drawn ? <ChoicePicture choice={choice} value={each} /> : undefined,
      }))}
    />
  );
}
