/** Fixed sizes of sewing, which follow the toy. */
import type { ByScale } from '../../body';

/** What a binding shows; its strip is cut four times as wide (handbooks of dressmaking). */
export const BINDING_MM: ByScale = { small: 4, usual: 6, large: 8 };
/** How far an edge that opens lies past the centre line on either side, so that the two lap. */
export const PAST_CENTRE_MM: ByScale = { small: 5, usual: 10, large: 10 };
/** The fronts of a cape lap by twice this, 16 to 20 mm: enough for hook and loop or a snap (common practice, no source). */
export const CAPE_PAST_MM: ByScale = { small: 8, usual: 9, large: 10 };
