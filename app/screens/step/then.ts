import type { MeasureId } from '../../body';
import type { Making } from '../shared/making/making';
import { to } from '../shared/route';

/** Where a step that was called up leads back to: the review, the pattern, the toy's page, or the step that called it. */
export type Then = {
  readonly address: string;
  readonly measure?: MeasureId;
  readonly screen?: 'review' | 'pattern' | 'wishes' | 'toy';
} | null;

/** Reads `?then=`: a screen, or a step of this garment. */
export function thenOf({ toy, garment, steps }: Making, wanted: string | null): Then {
  if (wanted === 'review' || wanted === 'pattern' || wanted === 'wishes')
    return { screen: wanted, address: to('toy', toy.id, garment.id, wanted) };
  if (wanted === 'toy') return { screen: wanted, address: to('toy', toy.id) };
  const step = steps.find(({ measure }) => measure === wanted);
  return step ? { measure: step.measure, address: to('toy', toy.id, garment.id, 'measure', step.measure) } : null;
}
