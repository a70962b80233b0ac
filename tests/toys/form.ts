import type { MeasureId, Traits } from '../../app/body';

/** Uniform between two bounds. */
export type Between = (low: number, high: number) => number;

/** Exact readings, mm: what a tape of no thickness would show. */
export type Readings = { readonly [M in MeasureId]?: number };

/** What a body of solids measures, and which traits it has by its shape. */
export type Measured = { readonly readings: Readings; readonly traits: Partial<Traits> };

/** How numbers for a form are drawn: `between` plainly, `wide` too but stretched for bodies no maker has. */
export type Draw = { readonly between: Between; readonly wide: Between };

/** A neck hardly thinner than the head is no clear neck. */
export function neckTrait(readings: Readings): Traits['neck'] {
  return (readings['neck-girth'] ?? 0) < 0.9 * (readings['head-girth'] ?? 0) ? 'clear' : 'none';
}
