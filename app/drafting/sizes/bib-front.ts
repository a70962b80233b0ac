import { type Mm, type Scale, USUAL_CASING_MM } from '../../body';
import { STITCHED_DOWN_MM } from '../curves/shares';
import type { Straps } from '../heads/choices';
import { maker } from './maker';
import { PAST_CENTRE_MM, TAPE_MM } from './scale';
import { CROTCH_NOT_DRAWN } from './trousers';
import type { Wearer } from './wearer';

/** Half a bib is so wide for the chest, and no wider than this share of a quarter of the waist; never narrower than can be turned (common practice, no source). */
const HALF_SHARE = 0.13;
const MOST_OF_QUARTER = 0.85;
const LEAST_HALF_MM = 14;
/** A bib is at least so high, mm. */
const LEAST_HIGH_MM = 16;
/** Straps for their chest, finished, hemmed on both sides; of the bib's half at most. */
const STRAP_SHARE = 0.06;
const NARROWEST_STRAP_MM = 8;
const STRAP_OF_BIB = 0.5;
/** A waist is at least so long, mm. */
const LEAST_WAIST_MM = 60;
/** They are stitched on behind this far from the centre, of a quarter of the waist. */
const STRAP_FROM = 0.35;
/** On the bib they lap as any closure does, and it may be moved by its own width, mm (common practice, no source). */
const lapOf = (scale: Scale): Mm => 2 * PAST_CENTRE_MM[scale] + TAPE_MM[scale];

/** A bib on the waist of trousers, from the bodice's height, and its straps: over the shoulder and down to the waist behind. */
export const bibFrontSizes = maker(
  ['hip', 'legHalfHip', 'legRaised'],
  ['bibHalf', 'bibHigh', 'bibBelow', 'strapWidth', 'strapFrom', 'strapLength'],
  (wearer: Wearer<Straps>, { hip, legHalfHip, legRaised }) => {
    const chest = wearer.of('chest-girth');
    const quarter = hip / 4;
    const bibHalf = Math.min(Math.max(chest * HALF_SHARE, LEAST_HALF_MM), quarter * MOST_OF_QUARTER);
    const high = Math.max(wearer.of('bodice-height'), LEAST_HIGH_MM);
    const below = USUAL_CASING_MM[wearer.scale];
    const strapWidth = Math.min(Math.max(chest * STRAP_SHARE, NARROWEST_STRAP_MM), bibHalf * STRAP_OF_BIB);
    const strapFrom = quarter * STRAP_FROM;
    // Square below so steep a waist, a strap would lie past the centre.
    const isSteep = legRaised > legHalfHip * Math.min(1, strapFrom / below);
    return {
      sizes: {
        bibHalf,
        bibHigh: high + below,
        bibBelow: below,
        strapWidth,
        strapFrom,
        strapLength: wayOf(wearer, high, strapFrom + bibHalf) + STITCHED_DOWN_MM + below + lapOf(wearer.scale),
      },
      // On a waist as steep as that, or as small, neither bib nor straps have a place.
      stops: isSteep || hip < LEAST_WAIST_MM ? [CROTCH_NOT_DRAWN] : [],
    };
  },
);

/** From the bib's top over the shoulder to the waist behind, the second half of it aslant where straps cross. */
function wayOf(wearer: Wearer<Straps>, high: Mm, across: Mm): Mm {
  const over = wearer.of('strap-length');
  const behind = over / 2 + high;
  return over / 2 + (wearer.choices.straps === 'crossed' ? Math.hypot(behind, across) : behind);
}
