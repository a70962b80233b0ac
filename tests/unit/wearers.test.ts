import { expect, it } from 'vitest';
import type { Body } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import { bodyFrom } from '../../app/measuring';
import { canWear, labelOf } from '../../app/screens/pattern/wearers';
import { buildCard, builds } from '../toys/builds';

const bodies = builds.map((build) => bodyFrom(buildCard(build)));
const [, rabbit] = bodies as [Body, Body];

it.each(['tee', 'hooded-top', 'dress', 'skirt', 'scarf'])('%s: the toy it was drawn for can wear it', (garment) => {
  for (const body of bodies) expect(canWear(drafted(body, garment), body, body)).toBe(true);
});

it('a toy a little smaller can wear it, one much smaller or a little larger cannot', () => {
  const tee = drafted(rabbit, 'tee');
  expect(canWear(tee, rabbit, grown(rabbit, 0.97))).toBe(true);
  expect(canWear(tee, rabbit, grown(rabbit, 0.75))).toBe(false);
  expect(canWear(tee, rabbit, grown(rabbit, 1.08))).toBe(false);
});

it('a head too large for the opening is no wearer, whatever else fits', () => {
  const tee = drafted(rabbit, 'tee');
  const head = rabbit.sizes['head-girth'];
  if (!head) throw new Error('no head');
  const big = { ...rabbit, sizes: { ...rabbit.sizes, 'head-girth': { ...head, value: head.value * 2 } } };
  expect(canWear(tee, rabbit, big)).toBe(false);
});

it('a label names a range that holds the toy itself, and its head', () => {
  for (const body of bodies) {
    const label = labelOf(drafted(body, 'tee'), body);
    const chest = body.sizes['chest-girth']?.value ?? 0;
    expect(label?.place).toBe('chest');
    expect(label?.range.least).toBeLessThan(chest);
    expect(label?.range.most).toBeGreaterThanOrEqual(chest);
    expect(label?.head).toBeGreaterThanOrEqual((body.sizes['head-girth']?.value ?? 0) - 0.01);
  }
});

function drafted(body: Body, garment: string): Draft {
  const full = fullOrder({ garment }, '2026-11-20');
  if (!full.ok) throw new Error(full.fault.code);
  const outcome = draft(body, full.order, full.garment, 'x');
  if (!outcome.ok) throw new Error(outcome.flags.map(({ code }) => code).join());
  return outcome.draft;
}

function grown(body: Body, by: number): Body {
  const sizes = Object.entries(body.sizes).map(([id, known]) => [id, { ...known, value: known.value * by }]);
  return { ...body, sizes: Object.fromEntries(sizes) };
}
