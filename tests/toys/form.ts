import type { MeasureId, Traits } from '../../app/body';

/** Uniform between two bounds. */
export type Between = (low: number, high: number) => number;

/** Exact readings, mm: what a tape of no thickness would show. */
export type Readings = { readonly [M in MeasureId]?: number };

/** What a body of solids measures, and which traits it has by its shape. */
export type Measured = { readonly readings: Readings; readonly traits: Partial<Traits> };

/** How numbers for a form are drawn: `between` plainly, `wide` too but stretched for bodies no maker has. */
export type Draw = { readonly between: Between; readonly wide: Between };
