import { expect, test } from 'vitest';
import type { Card } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { type Chosen, made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const cards = Object.fromEntries(builds.map((build) => [build.name, buildCard(build)]));

function drafted(card: Card | undefined, garment: string, choices: Chosen = {}): Draft {
  const draft = card && made(card, garment, { choices });
  if (!draft) throw new RangeError(`not drafted: ${garment}`);
  return draft;
}

const gives = (draft: Draft, passes: string, through: string) => {
  const row = draft.openings.find((each) => each.passes === passes && each.through === through);
  return row ? row.gives - row.needs : null;
};

test.each(builds.map(({ name }) => [name]))('an arm goes through every sleeve and armhole of %s', (name) => {
  const card = cards[name];
  const tank = drafted(card, 'tank');
  const short = drafted(card, 'tee', { sleeve: 'short' });
  const puffed = drafted(card, 'tee', { sleeve: 'puffed' });
  expect(gives(tank, 'paw-girth', 'armhole')).toBeGreaterThan(0);
  expect(gives(tank, 'arm-root-girth', 'armhole')).toBeGreaterThan(0);
  for (const draft of [short, puffed])
    for (const passes of ['paw-girth', 'upper-arm-girth']) expect(gives(draft, passes, 'cuff')).toBeGreaterThan(0);
});

test.each(['tee', 'hooded-top', 'dress'])('nothing stays closed on the word of an estimated head: %s', (garment) => {
  const { 'head-girth': _, ...readings } = cards.bear?.readings ?? {};
  const card = cards.bear && { ...cards.bear, readings };
  const draft = drafted(card, garment);
  expect(['front', 'back']).toContain(draft.order.choices.opening);
  expect(draft.flags.map(({ code }) => code)).toContain('opening-for-guess');
  expect(drafted(card, garment, { opening: 'none' }).order.choices.opening).toBe('none');
});

test('a bodice held up by straps opens behind unless she wishes otherwise', () => {
  expect(drafted(cards.rabbit, 'dress', { bodice: 'band' }).order.choices.opening).toBe('back');
  expect(drafted(cards.rabbit, 'dress', { bodice: 'band', opening: 'none' }).order.choices.opening).toBe('none');
});

test.each([
  ['bear', 1.6],
  ['bear', 2.2],
  ['tiny', 2.2],
  ['huge', 2.2],
] as const)('a head of many chests goes into a dress that opens as far down as it asks: %s, %s', (name, times) => {
  const card = cards[name];
  if (!card) throw new RangeError(name);
  const chest = card.readings['chest-girth']?.[0] ?? 0;
  const big = {
    ...card,
    readings: { ...card.readings, 'head-girth': [Math.round(chest * times)] },
  };
  for (const choices of [{}, { bodice: 'tank', sleeve: 'none' }, { bodice: 'band' }, { bodice: 'halter' }]) {
    const draft = drafted(big, 'dress', choices);
    for (const { passes, gives, needs } of draft.openings)
      if (passes === 'head-girth') expect(gives).toBeGreaterThanOrEqual(needs);
  }
});

test.each(['shoulder', 'tank', 'band'])(
  'of tiers only the first opens: where no head comes in, the toy steps in (%s)',
  (bodice) => {
    const { tiny } = cards;
    const card = tiny && { ...tiny, readings: { ...tiny.readings, 'head-girth': [400] } };
    const draft = drafted(card, 'dress', { bodice, skirt: 'tiers' });
    expect(draft.flags.map(({ code }) => code)).not.toContain('will-not-pass');
    const rows = draft.openings.filter(({ through }) => ['neck', 'waist'].includes(through));
    expect(rows.map(({ passes }) => passes)).toContain('hip-girth');
    for (const { passes, gives, needs } of rows) {
      expect(gives).toBeGreaterThanOrEqual(needs);
      if (passes === 'hip-girth') expect(needs).toBeLessThan(400 * 0.9);
    }
    // Left closed on wish, nothing is stepped into.
    const closed = drafted(card, 'dress', { bodice, skirt: 'tiers', opening: 'none' });
    expect(closed.flags.map(({ code }) => code)).toContain('will-not-pass');
    expect(closed.openings.map(({ passes }) => passes)).not.toContain('hip-girth');
  },
);

test('a skirt opened far below its waist for the head is said to gape', () => {
  const said = (head: number) => {
    const card = cards.doll && { ...cards.doll, readings: { ...cards.doll.readings, 'head-girth': [head] } };
    return drafted(card, 'dress', { opening: 'back' }).flags.find(({ code }) => code === 'skirt-gapes')?.values.by;
  };
  expect(said(328)).toBeUndefined();
  expect(said(479)).toBeCloseTo(111.4, 1);
});

test('a dress that opens to its hem has nothing sewn below its opening', () => {
  const card = cards.tiny && {
    ...cards.tiny,
    readings: { ...cards.tiny.readings, 'head-girth': [360] },
  };
  const draft = drafted(card, 'dress');
  const back = draft.pieces.find(({ name }) => name === 'skirt-back');
  expect(back?.edges.map(({ name }) => name)).toEqual(['top', 'side', 'bottom', 'opening']);
  expect(draft.seams.some(({ name }) => name === 'skirt-back')).toBe(false);
});

test('what hangs from its elastic behind is stepped into where the head is the larger', () => {
  const card = cards.bear && {
    ...cards.bear,
    readings: { ...cards.bear.readings, 'head-girth': [800] },
  };
  const row = drafted(card, 'dress', { bodice: 'half-circle' }).openings.find(({ through }) => through === 'waist');
  expect(row?.passes).toBe('hip-girth');
  expect(row?.gives).toBeGreaterThan(row?.needs ?? 0);
});

test('what a neck gives is its finished edge, a raglan sleeve’s share with it', () => {
  const draft = drafted(cards.bear, 'tee', { armhole: 'raglan', opening: 'none' });
  const neck = draft.fit.find(({ place }) => place === 'neck');
  const row = draft.openings.find(({ through }) => through === 'neck');
  const bound = draft.seams.find(({ name }) => name === 'binding-edge');
  expect(row?.gives).toBeCloseTo(neck?.garment ?? 0, 6);
  expect(row?.gives).toBeCloseTo(2 * (bound?.secondLength ?? 0), 6);
});

test('what opens by a slit on a soft toy opens all the way behind on a firm one: its arms do not bend', () => {
  const opens = (card: Card, stuffing: 'soft' | 'firm') =>
    drafted({ ...card, toy: { ...card.toy, traits: { ...card.toy.traits, stuffing } } }, 'tee').order.choices.opening;
  const all = Object.values(cards).flatMap((card) => {
    const girth = card.readings['neck-girth']?.[0] ?? 0;
    const large = { ...card, readings: { ...card.readings, 'head-girth': [Math.round(1.3 * girth)] } };
    return [[opens(large, 'soft'), opens(large, 'firm')]];
  });
  expect(all.filter(([soft]) => soft === 'slit').length).toBeGreaterThan(2);
  for (const [, firm] of all) expect(['back', 'none']).toContain(firm);
});
