/** Where down the side the tummy is fullest, as a share of the side. */
export const FULLEST = 0.6;

/** How far half a bib reaches round the neck, radians: it lies flat, and its arms stop short of each other. */
export const BIB_REACH = 2.5;
