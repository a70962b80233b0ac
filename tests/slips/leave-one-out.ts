import { type Card, estimate, findMeasure, type MeasureId, measureIds } from '../../app/body';
import { bodyFrom } from '../../app/measuring';

/** How well one measure is guessed from a toy's others, over the toys that have it. */
export type Guessed = {
  readonly measure: MeasureId;
  readonly toys: number;
  /** Of those, how many lay within the stated give. */
  readonly within: number;
  /** Mean of estimate over reading, on the log scale, less 1: above 0 is guessed too long. */
  readonly bias: number;
  /** Mean give as a share of the guess. */
  readonly give: number;
};

/** Every reading of every toy guessed from the toy's other readings, as if it had not been taken. */
export function leaveOneOut(cards: readonly Card[]): readonly Guessed[] {
  return measureIds.flatMap((measure) => {
    const each = cards.flatMap((card) => {
      const { [measure]: taken, ...rest } = card.readings;
      const [value] = taken ?? [];
      const guess = value && findMeasure(measure) ? estimate(bodyFrom({ ...card, readings: rest }), measure) : null;
      return value && guess
        ? [
            {
              log: Math.log(guess.value / value),
              in: Math.abs(guess.value - value) <= guess.give,
              give: guess.give / guess.value,
            },
          ]
        : [];
    });
    if (each.length === 0) return [];
    const mean = (of: (one: (typeof each)[number]) => number) =>
      each.reduce((sum, one) => sum + of(one), 0) / each.length;
    return [
      {
        measure,
        toys: each.length,
        within: each.filter((one) => one.in).length,
        bias: Math.exp(mean(({ log }) => log)) - 1,
        give: mean(({ give }) => give),
      },
    ];
  });
}
