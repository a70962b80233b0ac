import type { Mm } from './units';

const APART_MM = 4;
const APART_SHARE = 0.04;

/**
 * How far two readings of one measure may lie apart, whichever is larger, before a third is asked for: soft toys squash.
 * `mean` is theirs. Common practice, no source.
 */
export const mayLieApart = (mean: Mm): Mm => Math.max(APART_MM, APART_SHARE * mean);
