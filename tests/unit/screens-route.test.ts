import { describe, expect, test } from 'vitest';
import { likingFrom } from '../../app/screens/shared/defaults';
import { placeAddress } from '../../app/screens/shared/places';
import { readRoute, to } from '../../app/screens/shared/route';

describe('addresses', () => {
  test('lead back to what they were made of, whatever the parts hold', () => {
    const parts = ['toy', 'a b/ü?#', 'measure'];
    expect(readRoute(to(...parts)).parts).toEqual(parts);
    expect(readRoute(to()).parts).toEqual([]);
    expect(readRoute('').parts).toEqual([]);
    expect(readRoute('#/toy/%E0%A4%A').parts).toEqual(['toy', '%E0%A4%A']);
    expect(readRoute(`${to('toy', 'x')}?then=review`).query.get('then')).toBe('review');
  });

  test('of a place lead to its step, or to the toy where there is no garment', () => {
    expect(placeAddress({ toyId: 't', garmentId: 'g', step: 'measure/neck-girth' })).toBe(
      '#/toy/t/g/measure/neck-girth',
    );
    expect(placeAddress({ toyId: 't', garmentId: null, step: '' })).toBe('#/toy/t');
  });
});

describe('what the device suggests', () => {
  test.each([
    ['en-US', 'in', 'letter'],
    ['en', 'in', 'letter'],
    ['en-GB', 'cm', 'a4'],
    ['de-DE', 'cm', 'a4'],
    ['fr-CA', 'cm', 'letter'],
    ['es-MX', 'cm', 'letter'],
  ])('%s: %s and %s paper', (tag, unit, paper) => {
    expect(likingFrom({}, [tag])).toMatchObject({ unit, paper, theme: 'auto', halves: true, correction: 1 });
  });

  test('gives way to what the maker set, and to nothing that is no setting', () => {
    expect(likingFrom({ unit: 'cm', theme: 'dark', paper: 'a3' }, ['en-US'])).toMatchObject({
      unit: 'cm',
      theme: 'dark',
      paper: 'a3',
    });
    expect(likingFrom({ unit: 'ell', theme: 3 }, ['en-US'])).toMatchObject({ unit: 'in', theme: 'auto' });
    expect(likingFrom({}, [])).toMatchObject({ locale: 'en' });
  });
});
