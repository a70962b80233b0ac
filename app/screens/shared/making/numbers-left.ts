import { type Body, findMeasure, type Order } from '../../../body';
import type { Head } from '../../../drafting/catalogue';
import { asking, isWish } from '../../../measuring';
import type { Toy } from '../../../storage';
import { needsOf } from './making';

/** A number takes about this long with the tape in hand, minutes. */
const MINUTES_A_NUMBER = 0.65;

/**
 * How many numbers a garment still asks of a toy, as it is ordered or as it comes, and about how many minutes they take;
 * `firm` are those it cannot well be drawn without.
 */
export function numbersLeft(
  row: Head,
  toy: Toy,
  body: Body,
  order: Order = { garment: row.id },
): { count: number; minutes: number; firm: number } {
  const { asked } = asking(toy, needsOf(row, toy, order));
  const left = asked.filter((id) => body.sizes[id]?.from !== 'tape' && body.sizes[id]?.from !== 'photo');
  const firm = left.filter((id) => !isWish(id) && !findMeasure(id)?.optional).length;
  return { count: left.length, minutes: Math.max(Math.ceil(left.length * MINUTES_A_NUMBER), 1), firm };
}
