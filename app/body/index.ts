/**
 * The ground floor: what a toy's body is, in numbers. Measures, body kinds, cards, orders, flags and their rules,
 * lengths as people write them. Nothing of ours is imported here; no screen, store or drawing ever lives here.
 */
export { mayLieApart } from './apart';
export { BANK_CARD_MM } from './bank-card';
export type { Body, Known, Knowns, Origin, Taught } from './body';
export type { Card, Order } from './card';
export { characters, cleanLine, cleanLines, NAME_CHARACTERS, NOTE_CHARACTERS } from './clean-text';
export {
  CLOTH_LIMITS,
  type Cloth,
  clothOf,
  cloths,
  GATHERS_UP_TO_MM,
  type OwnCloth,
  THICK_FROM_MM,
  USUAL_CLOTH,
} from './cloths';
export type { Flag, Severity } from './flag';
export { judge } from './judge';
export {
  type BodyKind,
  bodyKinds,
  type TraitId,
  type Traits,
  traitValues,
  usualTraits,
} from './kinds';
export {
  type Hand,
  type LengthFault,
  type ParsedLength,
  parseLength,
} from './length';
export {
  decimalMark,
  formatLength,
  type InchParts,
  inchParts,
  isolated,
  millimetreFace,
  signedMillimetre,
  unitFace,
  unitSpoken,
  withUnit,
} from './length-words';
export { typicalKnowns } from './likeness';
export type { Group, Lean, Measure, Nature, Region, View } from './measure';
export { findMeasure, type MeasureId, measureIds, measures } from './measures';
export { estimate, estimates } from './proportions';
export type { Breach, Rule, RuleContext } from './rule';
export { rules } from './rules';
export { inTurn, type Say } from './say';
export { type ByScale, type Scale, scaleOf } from './scale';
export { type SizeId, sizeIds } from './sizes';
export { takingOf } from './taking';
export { teach } from './teach';
export { mostTelling, type Telling } from './telling';
export { longestTie } from './ties';
export { hemOf, USUAL_CASING_MM, USUAL_HEM_MM } from './turned-up';
export { typedUnit } from './typed-unit';
export {
  LONGEST_MM,
  MM_PER_INCH,
  type Mm,
  SHORTEST_MM,
  type Unit,
} from './units';
