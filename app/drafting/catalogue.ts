/**
 * What may be ordered, as plain data: the garments' heads, cloths, fits and allowances. A door of its own, so that choosing a
 * garment loads no block: how anything is made is never reached from here.
 */
export { bought } from './cloth/bought';
export { type Choice, type GarmentId, type Head, heads, type Offered, offered } from './heads';
export { notionWords } from './notions/words';
export { ofCloth } from './pieces/how-many';
export { allowanceRoles, usualAllowances } from './sizes/allowances';
export {
  CLOTH_LIMITS,
  type Cloth,
  clothOf,
  cloths,
  type OwnCloth,
  USUAL_CLOTH,
} from './sizes/cloths';
export { fitIds, fits, USUAL_FIT, usualFit } from './sizes/ease';
