import { expect, test } from 'vitest';
import { draft, fullOrder } from '../../app/drafting/draft';
import { bodyFrom, demoCards } from '../../app/measuring';

const upright = demoCards.filter((card) => card.toy.body === 'upright');

function drafted(card: (typeof demoCards)[number], covers: number) {
  const full = fullOrder({ garment: 'wrist-warmers', choices: { covers } }, card.taken);
  if (!full.ok) throw new RangeError(full.fault.where);
  const body = bodyFrom(card);
  const outcome = draft(body, full.order, full.garment, card.toy.name);
  if (!outcome.ok) throw new RangeError(outcome.flags.map((flag) => flag.code).join());
  const [piece] = outcome.draft.pieces;
  const length = (name: string) => piece?.edges.find((edge) => edge.name === name)?.length ?? 0;
  return { body, draft: outcome.draft, length };
}

test.each(upright.map((card) => [card.toy.name, card] as const))(
  '%s: a pair of tubes that pass the paws',
  (_, card) => {
    const { body, draft, length } = drafted(card, 0.4);
    expect(draft.pieces.map(({ name, copies }) => [name, copies])).toEqual([['wrist-warmer', 2]]);
    expect(draft.openings.every(({ needs, gives }) => gives >= needs)).toBe(true);
    expect(2 * length('bottom')).toBeGreaterThan(body.sizes['paw-girth']?.value ?? 0);
    expect(length('top')).toBeGreaterThanOrEqual(length('bottom'));
  },
);

test('they cover as much of the arm as is wished', () => {
  for (const card of upright) {
    const { body, length } = drafted(card, 0.7);
    const arm = body.sizes['arm-length']?.value ?? 0;
    expect(length('side')).toBeGreaterThanOrEqual(0.7 * arm - 0.05);
  }
});
