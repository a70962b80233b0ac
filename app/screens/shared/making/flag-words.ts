import { type Body, type Flag, type Hand, type Mm, typedUnit } from '../../../body';
import { type Speech, sayFirst, shownLength } from '../../../parts';
import { roughly } from './roughly';

/**
 * A flag as a sentence: its numbers, and the names of its measures as `first`, `second`, `third`. What the maker typed is
 * quoted in the unit she typed it in, and what is worked out beside it in that of the number most doubted;
 * what the others lead one to expect as roughly as the picture says it.
 */
export function flagWords(words: Speech, flag: Flag, body: Pick<Body, 'sizes'>): string {
  return said(words, flag, body, [`flag.${flag.code}`, 'flag.other']);
}

/** The same where the number stands above, in a picture of the toy as it would be: what remains to be said. */
export function doubtWords(words: Speech, flag: Flag, body: Pick<Body, 'sizes'>): string {
  return said(words, flag, body, [`doubt.${flag.code}`, `flag.${flag.code}`, 'flag.other']);
}

function said({ say, hand }: Speech, flag: Flag, { sizes }: Pick<Body, 'sizes'>, codes: readonly string[]): string {
  const { measures, about = measures, values } = flag;
  const [first = '', second = '', third = ''] = about.map((id) => say(`measure.${id}.name`));
  const typed = measures.flatMap((id) => (sizes[id]?.from === 'tape' ? (sizes[id]?.value ?? []) : []));
  const quoted = Object.entries(values).map(([name, value]) => {
    if (name === 'expected') return [name, roughly(value, inTypedUnit(typed[0], hand))] as const;
    const own = typed.find((each) => Math.abs(each - value) < SAME_MM);
    return [name, own === undefined ? value : shownLength(own, inTypedUnit(own, hand))] as const;
  });
  const { unit } = inTypedUnit(typed[0], hand);
  return sayFirst(say, codes, { ...Object.fromEntries(quoted), unit, first, second, third });
}

/** Numbers that are the same to anyone with a tape. */
const SAME_MM = 1e-3;

/** The unit a reading was typed in, for quoting it. */
export const inTypedUnit = (value: Mm | undefined, hand: Hand): Hand =>
  value === undefined ? hand : { ...hand, unit: typedUnit(value, hand.unit) };
