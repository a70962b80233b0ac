import { expect, test } from 'vitest';
import { garments } from '../../app/drafting/garments';
import { idleLooks, idleOffers, idleValues, strayLooks, upright } from '../measured/changes';
import type { Chosen } from '../measured/made';
import { beasts } from '../toys/beasts';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));
const each = upright.map((garment) => [garment.id, garment] as const);

/** Looks that only some choices ask about. */
const ASKED: Readonly<Record<string, readonly Chosen[]>> = {
  'hooded-top': [{ ears: 'open' }],
  jacket: [{ ears: 'open' }],
  cape: [{ hood: 'auto', ears: 'open' }],
};

/** Choice values that change nothing on any build: as many legs as the toy has is what it is anyway. */
const IDLE: Readonly<Record<string, readonly string[]>> = {
  // Open for a tail they come with hook and loop, but on a shelf: two choices from where they start.
  trousers: ['legs two', 'closedBy hook-and-loop'],
  dungarees: ['legs two'],
  romper: ['legs two'],
  // And so does a nappy.
  pants: ['legs two', 'closedBy hook-and-loop'],
};

test.each(each)('%s: each of a toy’s looks that it is cut by changes it on some toy', (id, garment) => {
  expect(idleLooks(cards, garment, ASKED[id])).toEqual([]);
});

test.each(each)('%s: a toy’s other looks change nothing of it', (_, garment) => {
  expect(strayLooks(cards, garment)).toEqual([]);
});

test.each(each)('%s: every value of every choice changes it on some toy', (id, garment) => {
  expect(idleValues(cards, garment)).toEqual(IDLE[id] ?? []);
});

test.each(each)('%s: beside every other choice, what is asked changes it on some toy', (_, garment) => {
  expect(idleOffers(cards, garment)).toEqual([]);
});

test('the tunic of round toys: its looks, every value and every offer change it on some toy, and nothing else does', () => {
  const garment = garments.find(({ id }) => id === 'tunic');
  const round = beasts.filter(({ toy }) => toy.body === 'round');
  if (!garment) throw new RangeError('no tunic');
  expect(idleLooks(round, garment)).toEqual([]);
  expect(strayLooks(round, garment)).toEqual([]);
  expect(idleValues(round, garment)).toEqual([]);
  expect(idleOffers(round, garment)).toEqual([]);
});
