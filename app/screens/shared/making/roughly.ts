import { type Hand, MM_PER_INCH, type Mm } from '../../../body';

/** What is only to be expected is said no finer than it is known: quarters of an inch, half centimetres; less of what is small. */
export function roughly(mm: Mm, { unit }: Pick<Hand, 'unit'>): Mm {
  const step = unit === 'in' ? MM_PER_INCH / 4 : 5;
  const fine = mm < 8 * step ? step / (unit === 'in' ? 4 : 5) : step;
  return Math.max(1, Math.round(mm / fine)) * fine;
}
