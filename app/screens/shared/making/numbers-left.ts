import { type Body, findMeasure, type Order, type Say } from '../../../body';
import type { Head } from '../../../drafting/catalogue';
import { asking, isWish, plan, type Way } from '../../../measuring';
import type { Toy } from '../../../storage';
import { type Making, needsOf, tapedOf } from './making';

/** A number takes about this long with the tape in hand, minutes. */
const MINUTES_A_NUMBER = 0.65;

/** Numbers still to take, and about how many minutes they take. */
export type Left = { readonly count: number; readonly minutes: number };

const leftOf = (count: number): Left => ({ count, minutes: Math.max(Math.ceil(count * MINUTES_A_NUMBER), 1) });

/**
 * What the tape still has to tell of a toy for a garment, as it is ordered or as it comes; `firm` are those it cannot well
 * be drawn without. Lengths to choose are not counted: they are suggested.
 */
export function numbersLeft(
  row: Head,
  toy: Pick<Toy, 'kind' | 'traits'>,
  body: Body,
  { order = { garment: row.id }, way = 'whole' }: { readonly order?: Order; readonly way?: Way } = {},
): Left & { readonly firm: number } {
  const { asked } = asking(toy, needsOf(row, toy, order), way);
  const taped = asked.filter((id) => !isWish(id));
  const left = plan(taped, body).steps.filter(({ state }) => state === 'open');
  return { ...leftOf(left.length), firm: left.filter(({ measure }) => !findMeasure(measure)?.optional).length };
}

/** What the tape still has to tell of a garment under way. */
export const stepsLeft = ({ steps, readings }: Pick<Making, 'steps' | 'readings'>): Left =>
  leftOf(tapedOf(steps).filter(({ measure }) => !readings[measure]).length);

/** How many numbers are left, in the words of `code`, and beside it how long they take. */
export const leftWords = (say: Say, code: string, left: Left): string =>
  say('list.row', { of: [say(code, left), say('screen.steps.minutes', left)] });

/** What a garment asks for: how many numbers, and how long they take. */
export const askedWords = (say: Say, left: Left): string =>
  left.count === 0 ? say('screen.garments.no-more') : leftWords(say, 'screen.garments.left', left);
