import type { TraitId, Traits } from './kinds';
import type { MeasureId } from './measures';

/** What a trait does to a typical value (factor); common practice and imagined toys, no source. */
type Shift = { readonly measure: MeasureId; readonly trait: TraitId; readonly value: string; readonly factor: number };

const shifts: readonly Shift[] = [
  // The more an arm sticks out, the less its underside is shorter than its outside.
  { measure: 'underarm-length', trait: 'arms', value: 'forward', factor: 1.13 },
  { measure: 'underarm-length', trait: 'arms', value: 'out', factor: 1.22 },
  { measure: 'underarm-length', trait: 'arms', value: 'up', factor: 1.3 },
  // Limbs set on the sides leave the back between them; one published bear (happybirth.hatenadiary.com, 2012-08-12) has a
  // quarter of its chest there. Their roots lie flat on the side line.
  { measure: 'across-shoulders', trait: 'limbs', value: 'sides', factor: 0.8 },
  { measure: 'side-inset', trait: 'limbs', value: 'sides', factor: 0.5 },
  { measure: 'underarm-length', trait: 'limbs', value: 'sides', factor: 1.1 },
  { measure: 'neck-girth', trait: 'neck', value: 'none', factor: 1.15 },
  { measure: 'shoulder-length', trait: 'shoulders', value: 'none', factor: 0.4 },
];

/** The factor by which a toy's traits move the typical value of a measure; 1 where they do not. */
export function traitShift(id: MeasureId, traits: Traits): number {
  return shifts
    .filter(({ measure, trait, value }) => measure === id && traits[trait] === value)
    .reduce((factor, shift) => factor * shift.factor, 1);
}
