import { describe, expect, test } from 'vitest';
import { type Card, findMeasure, type MeasureId, scaleOf } from '../../app/body';
import { type Draft, draft, fullOrder } from '../../app/drafting/draft';
import { garments } from '../../app/drafting/garments';
import { bodyFrom } from '../../app/measuring';
import { brokenIn } from '../holds';
import { randomDraft } from '../holds/random-draft';
import { unkindlyRefused } from '../holds/refused';
import { randomCard, seeded } from '../toys/random';

/** Drafts tried in CI over all garments; `npm run fuzz` tries as many as asked. */
const DRAFTS = 1500;
const NASTY_SHARE = 0.3;
/** A size that a seam solves leans a little on its neighbours (a widened sleeve on its cuff's taper, a fork on the crotch it closes), as a share. */
const LEANS = 0.004;
const EACH = Math.ceil(DRAFTS / garments.length);

describe.each(garments.map((garment) => [garment.id, garment] as const))('%s', (id) => {
  test(`${EACH} random toys, a third of them nasty: no exception, nothing broken, no plausible toy refused`, () => {
    const random = seeded(20261120);
    const faults: string[] = [];
    for (let n = 0; n < EACH; n++) {
      const nasty = random() < NASTY_SHARE;
      const { outcome, order } = randomDraft(random, nasty, [id]);
      const found = outcome.ok
        ? brokenIn(outcome.draft)
        : nasty
          ? defects(outcome.flags)
          : unkindlyRefused(id, outcome.flags);
      if (found.length > 0) faults.push(`#${n} ${JSON.stringify(order)}: ${found.join('; ')}`);
    }
    expect(faults.slice(0, 5)).toEqual([]);
  });

  test('the same body and order give the same draft', () => {
    const [one, two] = [0, 0].map(() => randomDraft(seeded(7), false, [id]).outcome);
    expect(one).toEqual(two);
  });

  test('a larger measure gives no smaller garment at the place it governs', () => {
    const random = seeded(31);
    const smaller: string[] = [];
    for (let n = 0; n < 20; n++) {
      const card = randomCard(random, garments.find((each) => each.id === id)?.bodies[0] ?? 'upright', { full: true });
      const before = drafted(card, id, {});
      if (!before) continue;
      const choices = before.order.choices;
      const settled = drafted(card, id, choices);
      for (const { place, measure } of placesOf(id)) {
        const larger = grown(card, measure, 1 + 0.08 * random());
        // A toy that is small no more has wider seams, hems and laps: another garment.
        if (scaleOf(bodyFrom(card)) !== scaleOf(bodyFrom(larger))) continue;
        const after = drafted(larger, id, choices);
        const [was, is] = [settled, after].map((each) => each?.fit.find((row) => row.place === place)?.garment);
        const same = JSON.stringify(after?.order.choices) === JSON.stringify(settled?.order.choices);
        if (was !== undefined && is !== undefined && same && is < was * (1 - LEANS))
          smaller.push(`#${n} ${place}: ${was} → ${is}`);
      }
    }
    expect(smaller.slice(0, 5)).toEqual([]);
  });
});

function drafted(card: Card, garment: string, choices: Draft['order']['choices']): Draft | null {
  const full = fullOrder({ garment, choices }, card.taken);
  if (!full.ok) throw new RangeError(full.fault.where);
  const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
  return outcome.ok ? outcome.draft : null;
}

function placesOf(id: string) {
  return garments.find((garment) => garment.id === id)?.fit ?? [];
}

/** The card with one measure longer; a wish or a length is left to its own places. */
function grown(card: Card, measure: MeasureId, factor: number): Card {
  const readings = card.readings[measure];
  if (!readings || !findMeasure(measure)) return card;
  return { ...card, readings: { ...card.readings, [measure]: readings.map((reading) => reading * factor) } };
}

function defects(flags: readonly { readonly code: string }[]): string[] {
  return flags.filter((flag) => flag.code === 'draft-defect').map((flag) => flag.code);
}
