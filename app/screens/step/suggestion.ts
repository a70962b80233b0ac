import { MM_PER_INCH, type Mm, type Unit } from '../../body';
import type { Step } from '../../measuring';

/** A wish is suggested to the nearest quarter inch or half centimetre: nobody wishes for sixteenths. */
const STEP_MM = { in: MM_PER_INCH / 4, cm: 5 } as const;

/** What a wish might well be, as a length one would choose; null where the tape decides, or the maker has chosen. */
export function suggestionFrom(step: Step | undefined, taken: number, unit: Unit): Mm | null {
  if (!step?.suggested || taken > 0) return null;
  const size = STEP_MM[unit];
  return Math.max(1, Math.round(step.suggested.value / size)) * size;
}
