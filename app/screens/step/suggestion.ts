import { findMeasure, type MeasureId, MM_PER_INCH, type Mm, type Unit } from '../../body';
import type { Making } from '../making';

/** A wish is suggested to the nearest quarter inch or half centimetre: nobody wishes for sixteenths. */
const STEP_MM = { in: MM_PER_INCH / 4, cm: 5 } as const;

/** What a wish might well be, judged by the other measures; null where the tape decides or nothing is known yet. */
export function suggestionFor({ body }: Making, measure: MeasureId, unit: Unit): Mm | null {
  const known = body.sizes[measure];
  if (findMeasure(measure)?.nature !== 'wish' || known?.from !== 'estimate') return null;
  const step = STEP_MM[unit];
  return Math.max(1, Math.round(known.value / step)) * step;
}
