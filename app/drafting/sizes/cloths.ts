import type { Cloth } from '../../body';

/** Cloth is data on the ground floor: what is judged of a body depends on it too. */
export {
  CLOTH_LIMITS,
  type Cloth,
  clothOf,
  cloths,
  GATHERS_UP_TO_MM,
  type OwnCloth,
  THICK_FROM_MM,
  USUAL_CLOTH,
} from '../../body';

/** Cloth over this thickness makes no binding: a strip of thin cloth does (common practice, no source). */
export const BINDS_UP_TO_MM = 1.5;

/** Woven cloth up to this thickness is lined with itself and turned out well (common practice, no source). */
const LINES_UP_TO_MM = 0.5;
export const isThinWoven = (cloth: Pick<Cloth, 'stretch' | 'thickness'>): boolean =>
  !isKnit(cloth) && cloth.thickness <= LINES_UP_TO_MM;

/** Knits are cut along their stretch, and anything that binds them too; woven cloth follows a curve on the bias. */
export const isKnit = ({ stretch }: Pick<Cloth, 'stretch'>): boolean => stretch > 0;
