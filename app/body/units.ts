/** A length in millimetres. Every length inside Hemling is one; inches exist only where a person types or reads them. */
export type Mm = number;

/** The unit a maker reads and types in. */
export type Unit = 'in' | 'cm';

/** International yard and pound agreement, 1959: exact. */
export const MM_PER_INCH = 25.4;

/** Shortest and longest length a reading may have: a bead's width, and well over any toy. */
export const SHORTEST_MM = 1;
export const LONGEST_MM = 3000;
