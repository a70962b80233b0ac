import type { BodyKind, Card } from '../../app/body';
import { draft, fullOrder, type Outcome } from '../../app/drafting/draft';
import { type Choice, cloths, fitIds, type Garment, garments } from '../../app/drafting/garments';
import { bodyFrom } from '../../app/measuring';
import { type Random, randomCard } from '../toys/random';

export type Drawn = { readonly card: Card; readonly order: Parameters<typeof fullOrder>[0]; readonly garment: Garment };
export type Tried = Drawn & { readonly outcome: Outcome };

export function pick<T>(random: Random, from: readonly T[]): T {
  const chosen = from[Math.floor(random() * from.length)];
  if (chosen === undefined) throw new RangeError('nothing to pick from');
  return chosen;
}

function someValue(random: Random, choice: Choice): string | boolean | number {
  if (choice.kind === 'one') return pick(random, choice.of);
  if (choice.kind === 'yes') return random() < 0.5;
  const value = choice.min + (choice.max - choice.min) * random();
  return choice.kind === 'count' ? Math.round(value) : value;
}

/** One random toy in one random garment with random choices, half of them left as they come. */
export function randomDraft(random: Random, nasty: boolean, only?: readonly string[]): Tried {
  return tried(randomOrder(random, nasty, only));
}

/** What to draft, drawn but not drafted: all that a draft takes from `random`. */
export function randomOrder(random: Random, nasty: boolean, only?: readonly string[]): Drawn {
  const garment = pick(random, only ? garments.filter((each) => only.includes(each.id)) : garments);
  const kind = pick<BodyKind>(random, garment.bodies);
  const card = randomCard(random, kind, { nasty });
  const chosen = Object.entries(garment.choices).filter(() => random() < 0.5);
  const order = {
    garment: garment.id,
    choices: Object.fromEntries(chosen.map(([name, choice]) => [name, someValue(random, choice)])),
    fit: pick(random, fitIds),
    cloth: pick(random, cloths).id,
  };
  return { card, order, garment };
}

export function tried({ card, order, garment }: Drawn): Tried {
  const full = fullOrder(order, card.taken);
  if (!full.ok) throw new RangeError(`${full.fault.code} ${full.fault.where}`);
  return { card, order, garment, outcome: draft(bodyFrom(card), full.order, full.garment, card.toy.name) };
}
