import { type Card, flagsOf, type MeasureId } from '../../app/body';
import { bodyFrom } from '../../app/measuring';
import { seeded } from '../toys/random';
import { type SlipKind, slipKinds, spoil } from './spoil';

/** A slip by this factor or more is plain: nearly all of them should be flagged. */
export const PLAIN_FACTOR = 2;

/** How many slips were tried, flagged, and flagged with the spoiled measure named first. */
export type Count = { readonly tried: number; readonly flagged: number; readonly right: number };

export type Tally = {
  readonly toys: number;
  /** Codes of the flags of toys nobody touched, one entry a toy that has any. */
  readonly falseAlarms: readonly string[];
  readonly byKind: ReadonlyMap<SlipKind | 'plain', Count>;
};

/** The flags that ask for an act; notes only tell. */
const asking = (card: Card) =>
  flagsOf(bodyFrom(card), { readings: card.readings }).filter((flag) => flag.severity !== 'note');

/** Judges each toy untouched, then with one reading spoiled in each way once. */
export function tally(cards: readonly Card[], seed: number): Tally {
  const random = seeded(seed);
  const falseAlarms: string[] = [];
  const byKind = new Map<SlipKind | 'plain', Count>();
  for (const card of cards) {
    const before = asking(card)[0];
    if (before) falseAlarms.push(`${before.code} ${before.measures.join(',')}`);
    for (const kind of slipKinds) {
      const spoiled = spoil(card, kind, random);
      if (!spoiled) continue;
      const first = asking(spoiled.card)[0]?.measures[0] ?? null;
      count(kind, first, spoiled.measures);
      if (spoiled.factor >= PLAIN_FACTOR) count('plain', first, spoiled.measures);
    }
  }
  return { toys: cards.length, falseAlarms, byKind };

  function count(kind: SlipKind | 'plain', first: MeasureId | null, spoiled: readonly MeasureId[]) {
    const { tried, flagged, right } = byKind.get(kind) ?? { tried: 0, flagged: 0, right: 0 };
    byKind.set(kind, {
      tried: tried + 1,
      flagged: flagged + (first ? 1 : 0),
      right: right + (first && spoiled.includes(first) ? 1 : 0),
    });
  }
}
