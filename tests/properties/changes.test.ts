import { expect, test } from 'vitest';
import { garments } from '../../app/drafting/garments';
import { idleLooks, idleOffers, idleValues, strayLooks, upright } from '../measured/changes';
import { holdChanges } from '../measured/hold-changes';
import { beasts } from '../toys/beasts';

holdChanges(upright.filter((_, at) => at % 2 === 0));

test('the tunic of round toys: its looks, every value and every offer change it on some toy, and nothing else does', () => {
  const garment = garments.find(({ id }) => id === 'tunic');
  const round = beasts.filter(({ toy }) => toy.body === 'round');
  if (!garment) throw new RangeError('no tunic');
  expect(idleLooks(round, garment)).toEqual([]);
  expect(strayLooks(round, garment)).toEqual([]);
  expect(idleValues(round, garment)).toEqual([]);
  expect(idleOffers(round, garment)).toEqual([]);
});
