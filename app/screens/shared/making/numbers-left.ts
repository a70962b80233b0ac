import type { Body } from '../../../body';
import type { Head } from '../../../drafting/catalogue';
import { asking } from '../../../measuring';
import type { Toy } from '../../../storage';
import { needsOf } from './making';

/** A number takes about this long with the tape in hand, minutes. */
const MINUTES_A_NUMBER = 0.65;

/** How many numbers a garment still asks of a toy, as it comes, and about how many minutes they take. */
export function numbersLeft(row: Head, toy: Toy, body: Body): { count: number; minutes: number } {
  const { asked } = asking(toy, needsOf(row, toy, { garment: row.id }));
  const count = asked.filter((id) => body.sizes[id]?.from !== 'tape' && body.sizes[id]?.from !== 'photo').length;
  return { count, minutes: Math.max(Math.ceil(count * MINUTES_A_NUMBER), 1) };
}
