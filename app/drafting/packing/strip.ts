// A strip of fixed width as short as can be: first laid bottom-left, then made shorter and separated, again and again; where
// that was too much, let out again little by little, and where it stays too much, begun anew from a lay that was shaken.

import { apart, shaken } from './apart';
import { chance } from './chance';
import { firstLays } from './first-lays';
import { ALIKE, type Field, type Found, type Job, type Strip } from './job';
import { Lay } from './lay';
import type { Shape } from './shape';
import { shorter, squeeze, stretch } from './shorter';

/** By what share a strip is made shorter at a time: at most, at least before starting again, and then. */
const SHORTER = { most: 0.03, least: 0.0005, again: 0.0025 } as const;
/** What becomes of that share where it was too much, and where it was not. */
const TOO_MUCH = 0.6;
const GOOD = 1.5;
/** Where pieces do not come apart they are given more room, this often, before they start again from the best lay. */
const LET_OUT = 3;
/** After so many failures, or one to so many pieces, it goes on from the shortest lay shaken. */
const STUCK = { failures: 8, pieces: 4 } as const;
/** Rounds without use before a length is given up: at first, by how much more after each new start, and at most. */
const PATIENCE = { first: 200, more: 1.2, most: 800 } as const;

/**
 * Ever shorter lays: stop asking when one is short enough or took long enough. The first comes at once, as bottom-left fill
 * makes it. Ends by itself where no shorter one can be. Yields between rounds, the best so far each time; the same seed
 * gives the same row. Every piece must fit the width: ends at once, with nothing, where one does not.
 */
export function* packStrip(job: Job, width: number, seed: number): Generator<Found<Strip>, void, void> {
  const lay = new Lay(job);
  const random = chance(seed);
  const endless: Field = { left: 0, top: 0, right: Infinity, bottom: width };
  const shortest = shortestStrip(job, width);
  let first: Strip | undefined;
  for (first of firstLays(lay, job, endless, shortest, random)) yield { steps: lay.steps, best: first };
  if (!first) return;
  let best = first;
  const found = (): Found<Strip> => ({ steps: lay.steps, best });
  const stuck = Math.max(STUCK.failures, job.pieces.length / STUCK.pieces);
  /** What is made shorter: the shortest lay, or one that was shaken and may become it. */
  let line = best;
  let share: number = SHORTER.most;
  let was = line.length;
  for (let failed = 0; best.length > shortest + ALIKE; ) {
    if (failed >= stuck) {
      line = yield* telling(shaken(lay, job, best, { ...endless, right: shortest }, random), found);
      [share, failed] = [SHORTER.most, 0];
    }
    const starts = failed % (LET_OUT + 1) === 0;
    if (starts && share < SHORTER.least) share = SHORTER.again;
    const field = { ...endless, right: Math.max(shortest, line.length * (1 - share)) };
    if (starts) squeeze(lay, job, line, field, random);
    else stretch(lay, was, field.right);
    was = field.right;
    const patience = Math.min(PATIENCE.most, PATIENCE.first * PATIENCE.more ** Math.floor(failed / (LET_OUT + 1)));
    const isApart = yield* telling(apart(lay, job, field, { random, patience }), found);
    if (isApart) line = shorter(lay, line);
    if (line.length < best.length) best = line;
    failed = isApart ? 0 : failed + 1;
    share = isApart ? Math.min(SHORTER.most, share * GOOD) : share * TOO_MUCH;
    yield found();
  }
}

/** Work that goes on, and after each round of it what was found so far. */
function* telling<Result>(
  work: Generator<void, Result, void>,
  found: () => Found<Strip>,
): Generator<Found<Strip>, Result, void> {
  let round = work.next();
  for (; !round.done; round = work.next()) yield found();
  return round.value;
}

/** No lay is shorter: the pieces' area takes it, and so does the longest of them. */
export function shortestStrip({ stock, pieces }: Job, width: number): number {
  const area = pieces.reduce((sum, { turns }) => sum + (stock.shapes[turns[0] ?? 0]?.area ?? 0), 0);
  const least = pieces.map(({ turns }) =>
    Math.min(
      ...turns.flatMap((turn) => {
        const shape = stock.shapes[turn] as Shape;
        return shape.height <= width + ALIKE ? [shape.width] : [];
      }),
    ),
  );
  return Math.max(area / width, ...least);
}
