import type { Mm } from '../../body';
import type { Draft, Outcome } from '../../drafting/draft-types';
import { type TriedPoint, type Turn, triedPoints, turnsFor, type Wrong, wrongsAt } from '../shared/trying/points';
import { type Corrections, propose } from '../shared/trying/propose';

/** Where a garment that lies flat is measured: across (half of what goes round), or along. */
export type FlatSize = {
  /** Its words: the place, or the size it is long by. */
  readonly id: string;
  readonly point: TriedPoint;
  readonly way: 'across' | 'along';
  /** What this draft comes to there, lying flat, mm. */
  readonly now: Mm;
};

/** Places a ruler can be laid across, from the top down; the others are edges, not widths. */
const ACROSS: readonly string[] = ['brim', 'chest', 'tummy', 'waist', 'seat', 'hem', 'upper-arm', 'wrist', 'leg-hem'];

/** What can be measured of such a garment as it lies flat: first across, then along. */
export function flatSizes(draft: Draft): readonly FlatSize[] {
  const across = ACROSS.flatMap((id) => triedPoints.find((point) => point.id === id) ?? []);
  return (['across', 'along'] as const).flatMap((way) =>
    (way === 'across' ? across : triedPoints).flatMap((point): FlatSize[] => {
      const wrong = wrongOf(way, 1);
      const turn = turnsFor(point, wrong).find(({ measured }) => measured(draft) !== null);
      if (!turn || !wrongsAt(point, draft).includes(wrong)) return [];
      const long = turn.measured(draft) ?? 0;
      return [{ id: way === 'across' ? point.id : turn.lead, point, way, now: long / folds(way) }];
    }),
  );
}

/** What lies flat is half of what goes round. */
const folds = (way: FlatSize['way']) => (way === 'across' ? 2 : 1);
const wrongOf = (way: FlatSize['way'], by: number): Wrong =>
  way === 'across' ? (by > 0 ? 'tight' : 'loose') : by > 0 ? 'short' : 'long';

export type Wanted = FlatSize & { readonly wanted: Mm };
export type Reached = {
  readonly corrections: Corrections;
  readonly draft: Draft;
  /** What could not be as wanted. */
  readonly missed: readonly FlatSize[];
};

/** As near as two garments are ever measured, mm. */
const NEAR_MM = 0.5;
/** One size moves another a little; twice round, and all stand. */
const ROUNDS = 2;

/**
 * The finished sizes of a garment that fits, taken over one by one: never as measures, or ease would count twice. Null where
 * none of them moves anything.
 */
export async function takenOver(
  before: Draft,
  corrections: Corrections,
  all: readonly Wanted[],
  drafted: (corrections: Corrections) => Promise<Outcome>,
): Promise<Reached | null> {
  let reached: Reached = { corrections, draft: before, missed: [] };
  for (let round = 0; round < ROUNDS; round++) {
    for (const each of all) {
      const by = lacking(each, reached.draft);
      if (Math.abs(by) <= NEAR_MM) continue;
      const told = { point: each.point, wrong: wrongOf(each.way, by), amount: Math.abs(by) };
      const found = await propose(reached.draft, reached.corrections, told, drafted);
      if (found) reached = { ...reached, corrections: found.corrections, draft: found.draft };
    }
  }
  const missed = all.filter((each) => Math.abs(lacking(each, reached.draft)) > 2 * NEAR_MM);
  return reached.draft === before && missed.length === 0 ? null : { ...reached, missed };
}

/** How much is still to add, mm of the finished size. */
function lacking({ point, way, wanted }: Wanted, draft: Draft): Mm {
  const turn: Turn | undefined = turnsFor(point, wrongOf(way, 1)).find(({ measured }) => measured(draft) !== null);
  return wanted * folds(way) - (turn?.measured(draft) ?? 0);
}
