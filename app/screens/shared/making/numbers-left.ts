import { type Body, findMeasure, type Order, type Say } from '../../../body';
import type { Head } from '../../../drafting/catalogue';
import { asking, isWish } from '../../../measuring';
import type { Toy } from '../../../storage';
import { type Making, needsOf, tapedOf } from './making';

/** A number takes about this long with the tape in hand, minutes. */
const MINUTES_A_NUMBER = 0.65;

/** Numbers still to take, and about how many minutes they take. */
export type Left = { readonly count: number; readonly minutes: number };

const leftOf = (count: number): Left => ({ count, minutes: Math.max(Math.ceil(count * MINUTES_A_NUMBER), 1) });

/** What a garment still asks of a toy, as it is ordered or as it comes; `firm` are those it cannot well be drawn without. */
export function numbersLeft(
  row: Head,
  toy: Toy,
  body: Body,
  order: Order = { garment: row.id },
): Left & { readonly firm: number } {
  const { asked } = asking(toy, needsOf(row, toy, order));
  const left = asked.filter((id) => body.sizes[id]?.from !== 'tape' && body.sizes[id]?.from !== 'photo');
  return { ...leftOf(left.length), firm: left.filter((id) => !isWish(id) && !findMeasure(id)?.optional).length };
}

/** What the tape still has to tell of a garment under way. */
export const stepsLeft = ({ steps, readings }: Pick<Making, 'steps' | 'readings'>): Left =>
  leftOf(tapedOf(steps).filter(({ measure }) => !readings[measure]).length);

/** How many numbers are left, in the words of `code`, and beside it how long they take. */
export const leftWords = (say: Say, code: string, left: Left): string =>
  say('list.row', { of: [say(code, left), say('screen.steps.minutes', left)] });
