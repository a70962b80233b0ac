import type { Cloth } from '../../body';

/** Cloth is data on the ground floor: what is judged of a body depends on it too. */
export { type Cloth, cloths, GATHERS_UP_TO_MM, THICK_FROM_MM, USUAL_CLOTH } from '../../body';

/** Cloth over this thickness makes no binding: a strip of thin cloth does (common practice, no source). */
export const BINDS_UP_TO_MM = 1.5;

/** Knits are cut along their stretch, and anything that binds them too; woven cloth follows a curve on the bias. */
export const isKnit = ({ stretch }: Pick<Cloth, 'stretch'>): boolean => stretch > 0;
