import { findMeasure, type MeasureId } from '../../../body';
import { isWish } from '../../../measuring';
import { type Making, tapedOf } from './making';

/** A guess that may be this share of itself off does not cut cloth: the number is asked for first. */
const VAGUEST = 0.4;

/** The number to take before anything can be drawn: none is taken yet, or one that shapes a piece is guessed too vaguely. */
export type Lacking = { readonly measure: MeasureId; readonly why: 'nothing' | 'vague' };

type Numbers = Pick<Making, 'needs' | 'body' | 'steps' | 'readings'>;

/** What stands between these numbers and a pattern; null where it can be drawn. What is hard to take, or wished, stops nothing. */
export function lackingOf({ needs, body, steps, readings }: Numbers): Lacking | null {
  const taped = tapedOf(steps).map(({ measure }) => measure);
  const firm = taped.filter((id) => !findMeasure(id)?.optional);
  const [first] = Object.keys(readings).length === 0 ? [...firm, ...taped] : firm;
  if (first && !taped.some((id) => readings[id])) return { measure: first, why: 'nothing' };
  const vague = needs.find((id) => {
    const known = body.sizes[id];
    return known && known.give > known.value * VAGUEST && !isWish(id) && !findMeasure(id)?.optional;
  });
  return vague ? { measure: vague, why: 'vague' } : null;
}
