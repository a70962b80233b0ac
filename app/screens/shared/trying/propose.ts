import type { Body, Mm, SizeId } from '../../../body';
import type { Draft, Outcome } from '../../../drafting/draft-types';
import { type TriedPoint, type Turn, turnsFor, type Wrong } from './points';

export type Corrections = Body['corrections'];

/** What is changed where something sat badly: the sizes from now on, and the draft they give. */
export type Proposal = {
  readonly lead: SizeId;
  /** By how much the garment changes at the place, mm; and the lead size. */
  readonly by: Mm;
  readonly corrections: Corrections;
  readonly draft: Draft;
  /** It was corrected here before, the same way: perhaps a number is wrong. */
  readonly again: boolean;
};

/** As near as a change comes to what was asked, mm: less than anybody measures. */
const NEAR_MM = 0.1;
/** Turned this far in vain, a size does not answer at this place. */
const DEAF_SHARE = 0.05;
const MOST_TRIES = 5;
/** Where a size answers in a jump (a dart falls away), more than was asked is better than nothing, up to so many times as much. */
const MOST_MORE = 3;

/**
 * Which finished size to change, never a measure, or ease would count twice: the first of the point's that answers, turned until
 * the garment changes there by just what was said, or in a jump by more. Null where none does. `drafted` drafts with given corrections.
 */
export async function propose(
  before: Draft,
  corrections: Corrections,
  { point, wrong, amount }: { readonly point: TriedPoint; readonly wrong: Wrong; readonly amount: Mm },
  drafted: (corrections: Corrections) => Promise<Outcome>,
): Promise<Proposal | null> {
  const by = wrong === 'tight' || wrong === 'short' ? amount : -amount;
  for (const turn of turnsFor(point, wrong)) {
    const found = await solved(before, corrections, turn, by, drafted);
    if (found) return found;
  }
  return null;
}

async function solved(
  before: Draft,
  corrections: Corrections,
  turn: Turn,
  by: Mm,
  drafted: (corrections: Corrections) => Promise<Outcome>,
): Promise<Proposal | null> {
  const start = turn.measured(before);
  if (start === null) return null;
  const again = (corrections[turn.lead] ?? 0) * by > 0;
  let more: Proposal | null = null;
  let [turned, gave] = [0, 0];
  let next = by;
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const changed = turnedBy(corrections, turn, next);
    const outcome = await drafted(changed);
    if (!outcome.ok) return more;
    const given = (turn.measured(outcome.draft) ?? start) - start;
    const made = { lead: turn.lead, corrections: changed, draft: outcome.draft, again };
    if (Math.abs(given - by) <= NEAR_MM) return { ...made, by };
    const times = given / by;
    if (times > 1 && times < Math.min(MOST_MORE, more ? more.by / by : Infinity)) more = { ...made, by: given };
    const slope = (given - gave) / (next - turned);
    if (!(Math.abs(slope) > DEAF_SHARE)) return more;
    [turned, gave, next] = [next, given, next + (by - given) / slope];
  }
  return more;
}

function turnedBy(corrections: Corrections, { sizes }: Turn, by: Mm): Corrections {
  const more = Object.entries(sizes).map(([size, share]) => [
    size,
    rounded((corrections[size as SizeId] ?? 0) + share * by),
  ]);
  return { ...corrections, ...Object.fromEntries(more) };
}

/** Kept to a thousandth, mm. */
const rounded = (mm: Mm) => Math.round(mm * 1000) / 1000;

/** The corrections without a lead size and all that is turned with it. */
export function withoutLead(corrections: Corrections, lead: SizeId, turns: readonly Turn[]): Corrections {
  const gone = new Set<string>([
    lead,
    ...turns.filter((turn) => turn.lead === lead).flatMap(({ sizes }) => Object.keys(sizes)),
  ]);
  return Object.fromEntries(Object.entries(corrections).filter(([size]) => !gone.has(size)));
}
