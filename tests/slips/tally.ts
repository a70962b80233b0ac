import { type Card, type Flag, judge } from '../../app/body';
import { bodyFrom } from '../../app/measuring';
import { seeded } from '../toys/random';
import { type SlipKind, type Spoiled, slipKinds, spoil } from './spoil';

/** A slip by this factor or more is plain: nearly all of them should be flagged. */
export const PLAIN_FACTOR = 2;
/** What is offered is right when it is this close to what was spoiled (share). */
const RIGHT_SHARE = 0.03;

/** How many slips were tried, flagged, and flagged with the spoiled measure named first; corrections offered, and right. */
export type Count = {
  readonly tried: number;
  readonly flagged: number;
  readonly right: number;
  readonly offered: number;
  readonly offeredRight: number;
  /** Doubts raised beside the first. */
  readonly more: number;
};

export type Tally = {
  readonly toys: number;
  /** Codes of the flags of toys nobody touched, one entry a toy that has any. */
  readonly falseAlarms: readonly string[];
  readonly byKind: ReadonlyMap<SlipKind | 'plain', Count>;
};

export const NONE: Count = { tried: 0, flagged: 0, right: 0, offered: 0, offeredRight: 0, more: 0 };

/** The flags that ask for an act; notes only tell. */
export const asking = (card: Card): readonly Flag[] =>
  judge(bodyFrom(card), {}, { readings: card.readings }).filter((flag) => flag.severity !== 'note');

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
      const flags = asking(spoiled.card);
      count(kind, flags, spoiled);
      if (spoiled.factor >= PLAIN_FACTOR) count('plain', flags, spoiled);
    }
  }
  return { toys: cards.length, falseAlarms, byKind };

  function count(kind: SlipKind | 'plain', flags: readonly Flag[], spoiled: Spoiled) {
    const had = byKind.get(kind) ?? NONE;
    const [first, ...more] = flags;
    const named = first?.measures[0];
    const offered = first?.values.offer !== undefined;
    byKind.set(kind, {
      tried: had.tried + 1,
      flagged: had.flagged + (first ? 1 : 0),
      right: had.right + (named && spoiled.measures.includes(named) ? 1 : 0),
      offered: had.offered + (offered ? 1 : 0),
      offeredRight: had.offeredRight + (first && isRight(first, spoiled) ? 1 : 0),
      more: had.more + more.length,
    });
  }
}

/** Whether what is offered is what was there before the slip. */
function isRight({ measures, values }: Flag, { measures: spoiled, was }: Spoiled): boolean {
  const [named] = measures;
  const before = named && was[spoiled.indexOf(named)];
  return before !== undefined && values.offer !== undefined && Math.abs(values.offer / before - 1) < RIGHT_SHARE;
}
