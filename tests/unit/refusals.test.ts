import { expect, test } from 'vitest';
import { bodyKinds } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import { findGarment, garments } from '../../app/drafting/garments';
import { bodyFrom, demoCards } from '../../app/measuring';
import { buildCard, builds } from '../toys/builds';

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

test.each(['tee', 'hooded-top', 'tank', 'nightshirt'])(
  '%s: a hem so wide that no side reaches it from the chest is refused, with both in the words',
  (garment) => {
    const card = buildCard(builds.find(({ name }) => name === 'rabbit') ?? expect.fail('no rabbit'));
    const full = fullOrder({ garment }, card.taken);
    if (!full.ok) throw new RangeError('no order');
    const wide = bodyFrom({ ...card, readings: { ...card.readings, 'hem-girth': [2449] } });
    const outcome = draft(wide, full.order, full.garment, card.toy.name);
    const [flag] = outcome.ok ? [] : outcome.flags;
    expect(flag?.code).toBe('side-cannot-reach');
    expect(flag?.measures).toContain('hem-girth');
    expect(flag?.values.chest).toBeGreaterThan((flag?.values.asked ?? 0) * 1.75);
  },
);
