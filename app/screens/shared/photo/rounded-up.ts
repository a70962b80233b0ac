import { type Hand, MM_PER_INCH, type Mm } from '../../../body';

/** A give as the hand's unit can show it, never less than it is. */
export function roundedUp(give: Mm, { unit }: Hand): Mm {
  const least = unit === 'in' ? MM_PER_INCH / 16 : 1;
  return Math.ceil(give / least) * least;
}
