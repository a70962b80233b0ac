import type { Known, Knowns, MeasureId } from '../body';

/** One measure is exactly the sum of others: known all but one, the last follows. */
type Sum = { readonly whole: MeasureId; readonly parts: readonly [MeasureId, MeasureId] };

const sums: readonly Sum[] = [{ whole: 'body-girth', parts: ['front-width', 'back-width'] }];

/**
 * What follows exactly from what is known, so that nobody is asked for it; the give adds up as independent errors do.
 * What would come out at nothing or less does not follow: the readings contradict each other, and the rules say so.
 */
export function followsFrom(known: Knowns): Knowns {
  const found: Partial<Record<MeasureId, Known>> = {};
  for (const { whole, parts } of sums) {
    const [sum, first, second] = [known[whole], known[parts[0]], known[parts[1]]];
    if (!sum && first && second) keep(whole, first.value + second.value, [first, second]);
    if (sum && first && !second) keep(parts[1], sum.value - first.value, [sum, first]);
    if (sum && second && !first) keep(parts[0], sum.value - second.value, [sum, second]);
  }
  return found;

  function keep(id: MeasureId, value: number, sources: readonly Known[]) {
    if (value > 0) found[id] = { value, from: 'derived', give: Math.hypot(...sources.map((each) => each.give)) };
  }
}

/**
 * Of measures that will all be taken, those that need not be: one of each sum, the last part (behind, so that the toy
 * need not be turned for it) unless another of the three is the only one not `answered` yet.
 */
export function followers(asked: readonly MeasureId[], answered: ReadonlySet<MeasureId>): readonly MeasureId[] {
  return sums.flatMap(({ whole, parts: [first, last] }) => {
    const all = [last, whole, first];
    if (!all.every((id) => asked.includes(id))) return [];
    return all.find((id) => !answered.has(id)) ?? [];
  });
}
