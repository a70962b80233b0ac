import { expect, test } from 'vitest';
import type { Garment } from '../../app/drafting/garments';
import { buildCard, builds } from '../toys/builds';
import { idleLooks, idleOffers, idleValues, strayLooks } from './changes';
import type { Chosen } from './made';

const cards = builds.map((build) => buildCard(build));

/** Looks that only some choices ask about. */
const ASKED: Readonly<Record<string, readonly Chosen[]>> = {
  'hooded-top': [{ ears: 'open' }],
  jacket: [{ ears: 'open' }],
  cape: [{ hood: 'auto', ears: 'open' }],
};

/** Choice values that change nothing on any build: as many legs as the toy has is what it is anyway. */
const IDLE: Readonly<Record<string, readonly string[]>> = {
  trousers: ['legs two'],
  dungarees: ['legs two'],
  romper: ['legs two'],
  // Open for a tail they come with hook and loop, but on a shelf: two choices from where they start. The waist of none
  // of these toys rises too steeply to be turned.
  pants: ['legs two', 'waist turned', 'closedBy hook-and-loop'],
};

/** Tests that what a garment asks of upright toys changes it, and nothing else does. In more than one file, for each takes a processor for minutes. */
export function holdChanges(garments: readonly Garment[]): void {
  const each = garments.map((garment) => [garment.id, garment] as const);

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
}
