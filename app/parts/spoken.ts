import { type Hand, type Say, unitFace, unitSpoken } from '../body';
import { eighths } from './keys';

/**
 * A text as a voice is to have it: most are silent at ⅜, and read the short form of a unit as a word of its own.
 * `17⅜ in`, as the screens print it, gives `17 and 3 eighths inches`.
 */
export function spoken(text: string, hand: Hand, say: Say): string {
  const { withFraction, withUnit } = patternsOf(unitFace(hand));
  return text
    .replace(ISOLATES, '')
    .replace(withFraction, (_, before?: string, closer?: string, over?: string, eighth?: string, unit?: string) => {
      const whole = before ?? closer;
      const part = partWords(over ? Number(over) : 2 * (eighths.indexOf(eighth ?? '') + 1), say);
      const number = whole ? say('length.spoken.mixed', { whole, part }) : part;
      return unit ? `${number} ${unitSpoken(hand, whole ? Number(whole) + 1 : 1)}` : number;
    })
    .replace(withUnit, (_, number: string) => `${number} ${unitSpoken(hand, Number(number.replace(',', '.')))}`);
}

/** A count of sixteenths in the largest parts that it is whole in. */
function partWords(sixteenths: number, say: Say): string {
  const parts = [
    ['half', 8],
    ['quarter', 4],
    ['eighth', 2],
    ['sixteenth', 1],
  ] as const;
  const [name, size] = parts.find(([, each]) => sixteenths % each === 0) ?? parts[3];
  return say(`length.spoken.${name}`, { count: sixteenths / size });
}

/** Marks of direction that are for the eye. */
const ISOLATES = /[\u2066-\u2069]/g;

/** Numbers with a fraction, their unit beside them or not; then those that have a unit alone. */
const patternsOf = (unit: string) => ({
  withFraction: new RegExp(
    `(?:(\\d+)\u00a0(?=\\d+⁄)|(\\d+)(?=[${eighths.join('')}]))?(?:(\\d{1,2})⁄16|([${eighths.join('')}]))(?:\u00a0(${unit})(?!\\p{L}))?`,
    'gu',
  ),
  withUnit: new RegExp(`(\\d+(?:[.,]\\d+)?)\u00a0${unit}(?!\\p{L})`, 'gu'),
});
