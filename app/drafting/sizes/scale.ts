/** Fixed sizes of sewing, which follow the toy. */
import type { ByScale, Scale } from '../../body';

/** What a binding shows; its strip is cut four times as wide (handbooks of dressmaking). */
export const BINDING_MM: ByScale = { small: 4, usual: 6, large: 8 };
/** A band of rib shows so much, at a sleeve and at a hem; it is cut twice as wide and folded (common practice, no source). */
export const WRIST_RIB_MM: ByScale = { small: 9, usual: 14, large: 24 };
export const HEM_RIB_MM: ByScale = { small: 12, usual: 18, large: 32 };

/** Hook and loop is so wide, and what is sewn on instead of it no wider (common practice, no source). */
export const TAPE_MM: ByScale = { small: 6, usual: 10, large: 20 };
/** Two edges that close lap by the tape and this much (common practice, no source). */
const LAP_OVER_TAPE_MM = 3;
/** How far an edge that opens lies past the centre line on either side, so that the two lap. */
export const PAST_CENTRE_MM: ByScale = {
  small: past('small'),
  usual: past('usual'),
  large: past('large'),
};
/** The fronts of a cape lap by twice this, 16 to 20 mm: enough for hook and loop or a snap (common practice, no source). */
export const CAPE_PAST_MM: ByScale = { small: 8, usual: 9, large: 10 };

/** The buttons of an old band stand about so far from its edge (common practice, no source). */
export const BAND_PAST_MM = 12;

function past(scale: Scale): number {
  return (TAPE_MM[scale] + LAP_OVER_TAPE_MM) / 2;
}
