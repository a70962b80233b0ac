import { MM_PER_INCH, type Mm, type Unit } from '../../body';

/** Cloth is cut from the bolt by whole centimetres, or half inches (common practice, no source). */
const STEP_MM: Readonly<Record<Unit, Mm>> = { cm: 10, in: MM_PER_INCH / 2 };

/** What to ask for so that a length is there, never less. */
export function bought(length: Mm, unit: Unit): Mm {
  return Math.ceil(length / STEP_MM[unit] - 1e-9) * STEP_MM[unit];
}
