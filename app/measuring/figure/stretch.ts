import { type BodyKind, findMeasure, type Group, type Knowns, type MeasureId } from '../../body';

/** How far one part of the drawing may grow or shrink: beyond this it is plainly wrong already, and stays a drawing. */
const MOST = 2.1;

/**
 * How much bigger or smaller than on the typical toy each part is, by the readings of it: 1 when they agree with the
 * toy's own size. Where several readings speak of one part, the one farthest off decides: a wrong number must show. A
 * part that no reading speaks of follows its group. One wrong number moves its own part alone,
 * since size and group are medians.
 */
export function stretchOf(kind: BodyKind, knowns: Knowns): (...ids: readonly MeasureId[]) => number {
  const ratios = ratiosOf(kind, knowns);
  const size = middling(ratios);
  const groups = new Map<Group, number>();
  for (const { group } of ratios) {
    groups.set(group, median(ratios.filter((each) => each.group === group).map(({ log }) => log)) - size);
  }
  return (...ids) => {
    const taken = ratios.filter(({ id }) => ids.includes(id)).map(({ log }) => log - size);
    if (taken.length > 0) return bounded(taken.reduce((far, log) => (Math.abs(log) > Math.abs(far) ? log : far)));
    const first = ids[0] && findMeasure(ids[0]);
    return bounded((first && groups.get(first.group)) ?? 0);
  };
}

/** How large a toy is beside the typical one of its kind: 1 as large. */
export const sizeOf = (kind: BodyKind, knowns: Knowns): number => Math.exp(middling(ratiosOf(kind, knowns)));

const middling = (ratios: readonly Ratio[]) =>
  median(ratios.filter(({ nature }) => nature !== 'wish').map(({ log }) => log));

type Ratio = { readonly id: MeasureId; readonly nature: string; readonly group: Group; readonly log: number };

function ratiosOf(kind: BodyKind, knowns: Knowns): Ratio[] {
  return Object.entries(knowns).flatMap(([id, known]) => {
    const measure = findMeasure(id);
    const typical = measure?.typical[kind];
    const counts = known && Number.isFinite(known.value) && known.value > 0 && known.from !== 'estimate';
    if (!measure || !typical || !counts) return [];
    return [{ id: measure.id, nature: measure.nature, group: measure.group, log: Math.log(known.value / typical) }];
  });
}

/** Near 1 as it is; farther off, ever nearer to the limits and never over them. */
export function bounded(log: number): number {
  const limit = Math.log(MOST);
  return Math.exp(limit * Math.tanh(log / limit));
}

/** The middle value; 0 of none. */
function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const [low, high] = [sorted[Math.ceil(middle) - 1] ?? 0, sorted[Math.floor(middle)] ?? 0];
  return (low + high) / 2;
}
