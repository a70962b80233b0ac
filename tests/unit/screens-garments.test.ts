import { expect, test } from 'vitest';
import type { BodyKind } from '../../app/body';
import { heads } from '../../app/drafting/catalogue';
import { draft, fullOrder } from '../../app/drafting/draft';
import { asking, bodyFrom, plan } from '../../app/measuring';
import { askedFor, askOf, asksAmong, orderFor } from '../../app/screens/garments/asked';
import { kindsWithLittle } from '../../app/screens/shared/making/garments-known';
import { needsOf, tapedOf } from '../../app/screens/shared/making/making';
import { numbersLeft } from '../../app/screens/shared/making/numbers-left';
import { randomCard, seeded } from '../toys/random';

const wornBy = (kind: BodyKind) => heads.filter(({ bodies }) => bodies.includes(kind));

test('first projects and no sewing can be asked for on every kind of body, and leave some out', () => {
  for (const kind of ['upright', 'four-legged', 'round'] as const) {
    const suited = wornBy(kind);
    expect(asksAmong(suited)).toEqual(['all', 'first', 'no-sewing']);
    for (const ask of ['first', 'no-sewing'] as const) {
      const left = askedFor(ask, suited);
      expect(left.length).toBeGreaterThan(0);
      expect(left.length).toBeLessThan(suited.length);
    }
    expect(askedFor('all', suited)).toEqual(suited);
  }
});

test('what leaves nothing, or everything, is not offered, and an address that asks for it shows everything', () => {
  const firsts = heads.filter(({ level, noSewing }) => level === 'first' && !noSewing);
  expect(asksAmong(firsts)).toEqual([]);
  expect(askOf('first', firsts)).toBe('all');
  expect(askOf('nonsense', heads)).toBe('all');
  expect(askOf('first', heads)).toBe('first');
});

test('what needs no sewing is begun in a cloth that does not fray, no edge of it turned', () => {
  for (const row of askedFor('no-sewing', heads)) {
    const card = randomCard(seeded(3), row.bodies[0] ?? 'upright');
    const full = fullOrder(orderFor('no-sewing', row), card.taken);
    if (!full.ok) throw new RangeError(full.fault.where);
    const outcome = draft(bodyFrom(card), full.order, full.garment, '');
    const edges = outcome.ok ? outcome.draft.pieces.flatMap((piece) => piece.edges) : [];
    expect(edges.length).toBeGreaterThan(0);
    expect(edges.filter(({ allowance }) => allowance > 0)).toEqual([]);
    expect(outcome.ok && outcome.draft.flags.map(({ code }) => code)).not.toContain('cut-from-felt');
  }
});

test('four legs and round toys have little to wear, and how much is counted', () => {
  const few = kindsWithLittle(heads);
  expect([...few.keys()]).toEqual(['four-legged', 'round']);
  expect(few.get('round')).toBe(wornBy('round').length);
});

test('a garment asks for as many numbers as there are steps with the tape; lengths to choose are none of them', () => {
  for (const row of heads) {
    const card = randomCard(seeded(5), row.bodies[0] ?? 'upright');
    const body = bodyFrom(card);
    const toy = { ...card.toy, kind: body.kind, traits: body.traits };
    const nothing = { ...body, sizes: {} };
    for (const way of ['whole', 'short'] as const) {
      const needs = needsOf(row, toy, { garment: row.id });
      const steps = tapedOf(plan(asking(toy, needs, way).asked, nothing).steps);
      expect(numbersLeft(row, toy, nothing, { way }).count, row.id).toBe(steps.length);
    }
  }
});
