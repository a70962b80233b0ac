import type { BodyKind } from './kinds';
import type { MeasureId } from './measures';

/** Measures that are taken otherwise than on an upright toy. */
const otherwise: { readonly [K in BodyKind]?: readonly MeasureId[] } = {
  'four-legged': ['chest-girth', 'height', 'cape-length'],
  round: ['neck-girth', 'body-girth', 'height'],
};

/** The codes of the words that tell how a measure is taken on a body of this kind, and what to mind. */
export function takingOf(kind: BodyKind, measure: MeasureId): { readonly how: string; readonly mind: string } {
  return otherwise[kind]?.includes(measure)
    ? { how: `taking.${kind}.${measure}.how`, mind: `taking.${kind}.${measure}.mind` }
    : { how: `measure.${measure}.how`, mind: `measure.${measure}.mind` };
}
