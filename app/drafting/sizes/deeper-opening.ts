import type { Mm } from '../../body';
import type { Skirts } from '../heads/choices';
import { maker, type Sizes } from './maker';
import { passingGirth } from './passing';
import { openLength } from './skirt';
import type { Wearer } from './wearer';

/** What is left closed above a skirt's hem is at least this share of its length, or nothing is (common practice, no source). */
const MOST_OPEN = 0.9;
/** The opening's end must not be the tightest place. */
const ROOM_MM = 10;

type Skirt = Sizes<'skirtOpen' | 'skirtLength'>;

/** The back of a dress opens as far below its waist as the head asks that comes in at the neck, not only the hips. */
export const openedForHead = maker(
  ['skirtOpen', 'skirtLength', 'neck', 'frontLength', 'frontNeckDrop', 'chest'],
  ['skirtOpen'],
  (wearer: Wearer<Skirts>, sizes) =>
    deeper(wearer, sizes, Math.min(sizes.neck, sizes.chest), sizes.frontLength - sizes.frontNeckDrop),
);

/** The same below a band, whose tightest place is its waist. */
export const openedForHeadBelowBand = maker(
  ['skirtOpen', 'skirtLength', 'waist', 'bandHeight'],
  ['skirtOpen'],
  (wearer: Wearer<Skirts>, sizes) => deeper(wearer, sizes, sizes.waist, sizes.bandHeight),
);

/** A skirt is closed by nothing below its waist: open so much farther than hips ask it gapes, mm (common practice, no source). */
const GAPES_MM = 25;

/** How far below the waist a skirt opens that was opened for the head, where it would gape; null where it does not. */
export function gaping(
  wearer: Pick<Wearer, 'of'>,
  { skirtOpen, skirtLength, waist }: Skirt & Sizes<'waist'>,
): Mm | null {
  return skirtOpen > openLength(wearer, waist, skirtLength) + GAPES_MM ? skirtOpen : null;
}

function deeper(wearer: Wearer<Skirts>, { skirtOpen, skirtLength }: Skirt, tightest: Mm, above: Mm) {
  const stretched = tightest * (1 + wearer.cloth.stretch / 2);
  const asked = (passingGirth(wearer, 'head-girth') - stretched) / 2 + ROOM_MM - above;
  const most = skirtLength * MOST_OPEN;
  // Of tiers only the first opens.
  const deepest = asked > most && wearer.choices.skirt !== 'tiers' ? skirtLength : Math.min(asked, most);
  return { sizes: { skirtOpen: Math.max(skirtOpen, deepest) } };
}
