import type { Mm } from '../../body';
import type { Stuff } from '../../drafting/cloth';
import { Picks, shownLength, useWords } from '../../parts';
import { AmountField } from '../shared/making/amount-field';
import { LEAST_MM, MOST_MM, soldWidths } from './widths';

/** What she has: cloth of a width, or a scrap, `long` along the grain and `wide` across it. */
export type Piecework = {
  readonly kind: 'width' | 'scrap';
  readonly width: Mm;
  readonly long: Mm;
  readonly wide: Mm;
};

type StuffPicksProps = { readonly picked: Piecework; readonly onPick: (picked: Piecework) => void };

const kind = { kind: 'length', min: LEAST_MM, max: MOST_MM, fallback: 0 } as const;

/** Which cloth: one of the widths it is sold in, another, or a scrap. */
export function StuffPicks({ picked, onPick }: StuffPicksProps) {
  const { say, hand } = useWords();
  const sold = soldWidths(hand.unit);
  const onSale = picked.kind === 'width' && sold.includes(picked.width);
  const chosen = picked.kind === 'scrap' ? 'scrap' : onSale ? String(picked.width) : 'other';
  const pick = (value: string) => {
    if (value === 'scrap') onPick({ ...picked, kind: 'scrap' });
    else onPick({ ...picked, kind: 'width', width: value === 'other' ? picked.wide : Number(value) });
  };
  return (
    <>
      <Picks
        legend={say('screen.cloth.which')}
        chosen={chosen}
        onPick={pick}
        picks={[
          ...sold.map((width) => ({
            value: String(width),
            words: say('screen.cloth.wide', { width: shownLength(width, hand) }),
          })),
          { value: 'other', words: say('screen.cloth.other') },
          { value: 'scrap', words: say('screen.cloth.scrap') },
        ]}
      />
      {chosen === 'other' && (
        <AmountField
          legend={say('screen.cloth.across')}
          kind={kind}
          value={picked.width}
          onChange={(width) => onPick({ ...picked, width, wide: width })}
        />
      )}
      {chosen === 'scrap' && (
        <>
          <AmountField
            legend={say('screen.cloth.along')}
            kind={kind}
            value={picked.long}
            onChange={(long) => onPick({ ...picked, long })}
          />
          <AmountField
            legend={say('screen.cloth.across')}
            kind={kind}
            value={picked.wide}
            onChange={(wide) => onPick({ ...picked, wide })}
          />
        </>
      )}
    </>
  );
}

export function stuffOf({ kind, width, long, wide }: Piecework, nap: boolean): Stuff {
  if (kind === 'width') return { width, nap };
  const corners = [
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ] as const;
  return { scrap: corners.map(([x, y]) => ({ x, y })), nap };
}
