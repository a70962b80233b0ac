import { expect, test } from 'vitest';
import type { Card } from '../../app/body';
import { type Draft, draft, fullOrder } from '../../app/drafting/draft';
import { bodyFrom } from '../../app/measuring';
import { flatSizes, takenOver, type Wanted } from '../../app/screens/fits/flat-sizes';
import { finishedOf } from '../../app/screens/shared/again/made';
import { isSame, since } from '../../app/screens/shared/again/since';
import type { Corrections } from '../../app/screens/shared/trying/propose';
import type { Made } from '../../app/storage';
import { brokenIn } from '../holds';
import { buildCard, builds } from '../toys/builds';

const [bear, rabbit] = builds.map((build) => buildCard(build));

function maker(card: Card | undefined, garment: string) {
  if (!card) throw new Error('no such build');
  const full = fullOrder({ garment }, card.taken);
  if (!full.ok) throw new Error(full.fault.where);
  const body = bodyFrom(card);
  return (corrections: Corrections) => draft({ ...body, corrections }, full.order, full.garment, card.toy.name);
}

function made(drafted: Draft, more: Partial<Made> = {}): Made {
  const { engine, toy } = drafted;
  const sizes = finishedOf(drafted);
  return { ...{ at: 0, engine, toyId: toy, toy, order: { garment: 'tee' }, measures: {}, sizes }, ...more };
}

function draftOf(card: Card | undefined, garment: string): Draft {
  const outcome = maker(card, garment)({});
  if (!outcome.ok) throw new Error('refused');
  return outcome.draft;
}

const head = { choices: { sleeve: { kind: 'one', of: ['long', 'short'], fallback: 'long' } } } as const;

test('of a garment made again by the same numbers nothing is another way', () => {
  const now = made(draftOf(bear, 'tee'));
  expect(isSame(since(now, now, head, true))).toBe(true);
});

test('a larger chest is listed with the finished sizes it changes, and no others', () => {
  if (!rabbit) throw new Error('no such build');
  const chest = rabbit.readings['chest-girth']?.[0] ?? 0;
  const larger: Card = { ...rabbit, readings: { ...rabbit.readings, 'chest-girth': [chest * 1.03] } };
  const before = made(draftOf(rabbit, 'tee'), { measures: { 'chest-girth': chest } });
  const now = made(draftOf(larger, 'tee'), { measures: { 'chest-girth': chest * 1.03 } });
  const told = since(before, now, head, true);
  expect(told.measures).toEqual([{ name: 'chest-girth', before: chest, now: chest * 1.03 }]);
  expect(told.sizes.map(({ name }) => name)).toContain('place.chest');
  expect(told.sizes.map(({ name }) => name)).not.toContain('size.sleeveLength');
  expect(since(before, now, head, false).measures).toEqual([]);
});

test('a choice left as usual is one with the same choice made', () => {
  const plain = made(draftOf(bear, 'tee'));
  const said = (sleeve: string) => ({ ...plain, order: { garment: 'tee', choices: { sleeve } } });
  expect(since(plain, said('long'), head, true).choices).toEqual([]);
  expect(since(plain, said('short'), head, true).choices).toEqual([
    { name: 'choice.sleeve', before: 'long', now: 'short' },
  ]);
  expect(since(plain, { ...plain, engine: '9.9.9' }, head, true).engine?.now).toBe('9.9.9');
});

/** A garment that fits, by what it measures lying flat: as much more or less than ours. */
test.each([
  ['tee', { chest: 12, hem: 12, wrist: 4, sleeveLength: -6, frontLength: 9 }],
  ['hooded-top', { chest: 10, frontLength: -8 }],
  ['trousers', { seat: 8, 'leg-hem': 5, legInside: 7 }],
  ['skirt', { waist: 6, skirtLength: 10 }],
] as const)('%s takes over the sizes of one that fits, and its seams match', async (garment, more) => {
  const make = maker(rabbit, garment);
  const before = draftOf(rabbit, garment);
  const wanted = flatSizes(before).flatMap((flat): Wanted[] => {
    const by = (more as Readonly<Record<string, number>>)[flat.id];
    return by === undefined ? [] : [{ ...flat, wanted: flat.now + by }];
  });
  expect(wanted).toHaveLength(Object.keys(more).length);
  const reached = await takenOver(before, {}, wanted, async (corrections) => make(corrections));
  if (!reached) throw new Error('nothing changes');
  const now = flatSizes(reached.draft);
  for (const { id, way, wanted: asked } of wanted)
    expect(Math.abs((now.find((flat) => flat.id === id && flat.way === way)?.now ?? 0) - asked)).toBeLessThan(0.6);
  expect(reached.missed).toEqual([]);
  expect(brokenIn(reached.draft)).toEqual([]);
});

test('what cannot be as wanted is said, and nothing is where all is so already', async () => {
  const before = draftOf(rabbit, 'tee');
  const make = maker(rabbit, 'tee');
  const [chest] = flatSizes(before).filter(({ id }) => id === 'chest');
  if (!chest) throw new Error('no chest');
  const taken = (wanted: number) => takenOver(before, {}, [{ ...chest, wanted }], async (more) => make(more));
  expect(await taken(chest.now)).toBeNull();
  expect((await taken(chest.now / 20))?.missed.map(({ id }) => id)).toEqual(['chest']);
});
