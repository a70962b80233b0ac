import type { Known, Knowns } from './body';
import type { MeasureId } from './measures';
import type { Mm } from './units';

/** A measure that others give by a formula better than by proportions alone; `give` is how far off it may be (share). */
type Formula = {
  readonly id: MeasureId;
  readonly from: readonly [MeasureId, MeasureId];
  readonly value: (first: Mm, second: Mm) => Mm;
  readonly give: number;
};

/** Common practice, no source. */
const formulas: readonly Formula[] = [
  { id: 'crotch-length', from: ['body-rise', 'hip-girth'], value: usualCrotch, give: 0.12 },
];

/** From waist to waist between the legs: twice the rise and the thickness of the hip, less 8 % for its roundness, mm. */
export function usualCrotch(rise: Mm, hip: Mm): Mm {
  return 0.92 * (2 * rise + hip / Math.PI);
}

/** What a formula makes of a measure, from others that are known and not themselves estimated; null without one. */
export function byFormula(sizes: Knowns, id: MeasureId): Known | null {
  for (const formula of formulas) {
    const [first, second] = formula.from.map((each) => sizes[each]);
    if (formula.id !== id || !isFirm(first) || !isFirm(second)) continue;
    const value = formula.value(first.value, second.value);
    if (value > 0) return { value, from: 'estimate', give: value * formula.give };
  }
  return null;
}

const isFirm = (known: Known | undefined): known is Known => known !== undefined && known.from !== 'estimate';
