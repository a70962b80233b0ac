import type { Flag, Say } from '../../../body';
import { sayFirst } from '../../../parts';

/** A flag as a sentence: its numbers, and the names of its measures as `first`, `second`, `third`. */
export function flagWords(say: Say, { code, measures, values }: Flag): string {
  const [first = '', second = '', third = ''] = measures.map((id) => say(`measure.${id}.name`));
  return sayFirst(say, [`flag.${code}`, 'flag.other'], { ...values, first, second, third });
}
