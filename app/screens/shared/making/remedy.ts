import type { Flag, Hand, MeasureId, Mm, Say } from '../../../body';
import { shownLength } from '../../../parts';
import { saveReading } from '../../../storage';

/** What would put a doubt right in one tap: the readings that were most likely meant, and the words on the button. */
export type Remedy = {
  readonly words: string;
  readonly meant: readonly { readonly measure: MeasureId; readonly mm: Mm }[];
};

/** The remedy of a flag, where it is clear what was meant; `here` is the measure the maker is looking at. */
export function remedyOf({ measures, values }: Flag, say: Say, hand: Hand, here?: MeasureId): Remedy | null {
  const [first, second] = measures;
  const { offer, otherOffer } = values;
  if (!first || offer === undefined) return null;
  const meant = [{ measure: first, mm: offer }];
  if (second && otherOffer !== undefined)
    return { words: say('screen.flag.swap'), meant: [...meant, { measure: second, mm: otherOffer }] };
  const length = shownLength(offer, hand);
  const words =
    first === here
      ? say('screen.flag.use', { length })
      : say('screen.flag.other-use', { name: say(`measure.${first}.name`), length });
  return { words, meant };
}

/** Keeps what was meant, in the place of what was read; what was read stays in the history. */
export async function putRight(toyId: string, { meant }: Remedy): Promise<void> {
  for (const { measure, mm } of meant) await saveReading(toyId, measure, mm, 'tape', { anew: true });
}
