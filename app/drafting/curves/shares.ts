/** What of a strap is stitched down on the bodice, below its top: enough for two rows across (common practice, no source). */
export const STITCHED_DOWN_MM = 10;
/** On half a circle a strap is stitched on where the circle is wide enough: this share of its height below its top. */
export const ROUND_STRAP_SHARE = 0.25;

/** How far half a bib reaches round the neck, radians: it lies flat, and its arms stop short of each other. */
export const BIB_REACH = 2.5;
