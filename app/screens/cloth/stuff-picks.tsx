import type { Mm } from '../../body';
import type { Stuff } from '../../drafting/cloth';
import type { SeenOutline } from '../../measuring/photo';
import { Icon, Picks, shownLength, useWords } from '../../parts';
import { AmountField } from '../shared/making/amount-field';
import { roundedUp } from '../shared/photo/rounded-up';
import { sidesOf } from './scrap-marks';
import { LEAST_MM, MOST_MM, soldWidths } from './widths';

/** What she has: cloth of a width, or a scrap, `long` along the grain and `wide` across it or of an outline from a photo. */
export type Piecework = {
  readonly kind: 'width' | 'scrap';
  readonly width: Mm;
  readonly long: Mm;
  readonly wide: Mm;
  readonly outline: SeenOutline | null;
};

type StuffPicksProps = {
  readonly picked: Piecework;
  readonly onPick: (picked: Piecework) => void;
  /** Where an outline is tapped on a photo. */
  readonly photo: string;
};

const kind = { kind: 'length', min: LEAST_MM, max: MOST_MM, fallback: 0 } as const;

/** Which cloth: one of the widths it is sold in, another, or a scrap. */
export function StuffPicks({ picked, onPick, photo }: StuffPicksProps) {
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
      {chosen === 'scrap' && picked.outline && (
        <div class="scrap-seen">
          <p>{say('photo.scrap-size', sidesOf(picked.outline))}</p>
          <p class="soft small">{say('photo.scrap-give', { give: roundedUp(picked.outline.give, hand) })}</p>
        </div>
      )}
      {chosen === 'scrap' && !picked.outline && (
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
      {chosen === 'scrap' && (
        <p class="scrap-acts">
          <a class="quiet" href={photo}>
            <Icon name="photo" />
            {say(picked.outline ? 'photo.other' : 'screen.cloth.by-photo')}
          </a>
          {picked.outline && (
            <button type="button" class="quiet" onClick={() => onPick({ ...picked, outline: null })}>
              {say('screen.cloth.by-size')}
            </button>
          )}
        </p>
      )}
    </>
  );
}

export function stuffOf({ kind, width, long, wide, outline }: Piecework, nap: boolean): Stuff {
  if (kind === 'width') return { width, nap };
  if (outline) return { scrap: outline.corners, give: outline.give, nap };
  const corners = [
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ] as const;
  return { scrap: corners.map(([x, y]) => ({ x, y })), nap };
}
