import { MM_PER_INCH, type Mm, type Unit } from './units';

/**
 * The longest a tie may hang free on clothes for a small child's toy, as a round length of the unit (common practice, no
 * source; local rules come first).
 */
export const longestTie = (unit: Unit): Mm => (unit === 'in' ? 8.5 * MM_PER_INCH : 220);
