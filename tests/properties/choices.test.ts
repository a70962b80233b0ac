import { expect, test } from 'vitest';
import type { BodyKind } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import { type Choice, cloths, garments } from '../../app/drafting/garments';
import { bodyFrom } from '../../app/measuring';
import { brokenIn } from '../holds';
import { pick } from '../holds/random-draft';
import { unkindlyRefused } from '../holds/refused';
import { randomCard, seeded } from '../toys/random';

/** Unseen toys, 18 cm to 1 m tall, for each value; `npm run fuzz` tries as many as asked. */
const TOYS = 12;

type Value = string | boolean | number;

function valuesOf(choice: Choice): readonly Value[] {
  if (choice.kind === 'one') return choice.of;
  return choice.kind === 'yes' ? [true, false] : [choice.min, choice.max];
}

const rows = garments.flatMap((garment) =>
  Object.entries(garment.choices).flatMap(([choice, kind]) =>
    // Its fallback is the garment as it comes, which random drafts try often.
    valuesOf(kind)
      .filter((value) => value !== kind.fallback)
      .map((value) => [garment.id, choice, value, garment] as const),
  ),
);

test.each(rows)('%s, %s %s: every plausible toy is drafted, and nothing is broken', (id, choice, value, garment) => {
  const random = seeded(id.length * 1000 + choice.length * 100 + String(value).length);
  const faults: string[] = [];
  for (let n = 0; n < TOYS; n++) {
    const card = randomCard(random, pick<BodyKind>(random, garment.bodies));
    const order = { garment: id, choices: { [choice]: value }, cloth: pick(random, cloths).id };
    const full = fullOrder(order, card.taken);
    if (!full.ok) throw new RangeError(full.fault.where);
    const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
    const found = outcome.ok ? brokenIn(outcome.draft) : unkindlyRefused(id, outcome.flags);
    if (found.length > 0) faults.push(`#${n} in ${order.cloth}: ${found.join('; ')}`);
  }
  expect(faults.slice(0, 3)).toEqual([]);
});
