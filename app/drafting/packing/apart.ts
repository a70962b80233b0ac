import { slideIn } from './bottom-left';
import type { Field, Job, Strip } from './job';
import type { Lay } from './lay';
import { leftFirst } from './orders';
import { separate } from './separate';
import { shorter, squeeze, stretch } from './shorter';

/** By what share a lay is taken in to shake it, and let out at a time until it comes apart. */
const SHAKEN = { by: 0.05, out: 0.02 } as const;
/** Rounds without use before it is let out. */
const PATIENCE = 200;

/** Whether the pieces come apart in the field; then each slid up and left as far as it goes. */
export function* apart(
  lay: Lay,
  job: Job,
  field: Field,
  how: Parameters<typeof separate>[3],
): Generator<void, boolean, void> {
  if ((yield* separate(lay, job, [field], how)) > 0) return false;
  for (const index of leftFirst(lay)) slideIn(lay, job, index, field);
  return true;
}

/** A lay about as long and yet another: taken in much too far, and let out until its pieces come apart. */
export function* shaken(
  lay: Lay,
  job: Job,
  best: Strip,
  shortest: Field,
  random: () => number,
): Generator<void, Strip, void> {
  let field = { ...shortest, right: Math.max(shortest.right, best.length * (1 - SHAKEN.by)) };
  squeeze(lay, job, best, field, random);
  while (!(yield* apart(lay, job, field, { random, patience: PATIENCE }))) {
    const was = field.right;
    field = { ...shortest, right: was + best.length * SHAKEN.out };
    stretch(lay, was, field.right);
  }
  return shorter(lay, undefined);
}
