import { formatLength, type Hand, inchParts, type Mm } from '../body';
import { writeInches } from './keys';

/** A stored length as it stands in a length field: the same text that the pad would have written. */
export function fieldText(mm: Mm, hand: Hand): string {
  if (hand.unit === 'cm') return formatLength(mm, hand, true);
  const { whole, sixteenths } = inchParts(mm);
  return writeInches({ whole: whole > 0 || sixteenths === 0 ? String(whole) : '', sixteenths });
}
