import { expect, test } from 'vitest';
import { bodyKinds } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import { findGarment, garments } from '../../app/drafting/garments';
import { bodyFrom, demoCards } from '../../app/measuring';

const unsuited = garments.flatMap((garment) =>
  bodyKinds.filter((kind) => !garment.bodies.includes(kind)).map((kind) => [garment.id, kind] as const),
);

test.each(unsuited)('%s for a %s toy is refused, and something that suits it is named', (id, kind) => {
  const card = demoCards.find((each) => each.toy.body === kind);
  const full = fullOrder({ garment: id }, '2026-11-20');
  if (!card || !full.ok) throw new RangeError('no toy or no order');
  const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
  const codes = outcome.ok ? [] : outcome.flags.map((flag) => flag.code);
  expect(codes[0]).toBe('body-not-suited');
  const named = codes.slice(1).map((code) => findGarment(code.replace(/^wears-/, '')));
  expect(named.length).toBeGreaterThan(0);
  expect(named.every((garment) => garment?.bodies.includes(kind))).toBe(true);
});
