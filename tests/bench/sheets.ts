/**
 * How many pages patterns take over the fewest that there could be: `npm run bench -- --sheets --runs N`, every garment
 * for the demo toys and N random ones, on A4 and on Letter; patterns with a piece larger than a page are left out.
 */

import { draft, fullOrder } from '../../app/drafting/draft';
import { garments } from '../../app/drafting/garments';
import { findPaper, layOut, type Paper, USUAL_EFFORT } from '../../app/drafting/sheets';
import { bodyFrom, demoCards } from '../../app/measuring';
import { randomCard, seeded } from '../toys/random';

const DATE = '2026-11-20';

/** Prints the share of patterns on as few pages as can be, and on at most one more, paper by paper. @param toys how many random ones */
export function benchSheets(toys: number): void {
  for (const id of ['a4', 'letter']) {
    const paper = findPaper(id);
    if (!paper) throw new RangeError(id);
    console.log(`${id}: ${surveyed(paper, toys)}`);
  }
}

function surveyed(paper: Paper, toys: number): string {
  const random = seeded(7);
  const more: number[] = [];
  for (const garment of garments) {
    const full = fullOrder({ garment: garment.id }, DATE);
    if (!full.ok) throw new RangeError(full.fault.where);
    const kinds = garment.bodies;
    const cards = Array.from({ length: toys }, (_, n) => randomCard(random, kinds[n % kinds.length] ?? 'upright'));
    for (const card of [...demoCards, ...cards]) {
      const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
      if (!outcome.ok) continue;
      const { pages, least } = layOut(outcome.draft, paper, { effort: USUAL_EFFORT, seed: 1 });
      if (!pages.some(({ tile }) => tile)) more.push(pages.length - least);
    }
  }
  const share = (most: number): string =>
    `${((100 * more.filter((each) => each <= most).length) / more.length).toFixed(1)} %`;
  return `${more.length} patterns, ${share(0)} on as few pages as can be, ${share(1)} on at most one more`;
}
