import { describe, expect, it } from 'vitest';
import { bodyKinds } from '../../app/body';
import { tally } from '../slips/tally';
import { randomCard, seeded } from '../toys/random';

const TOYS = 150;

/** The aims of the measuring page with room for chance at 150 toys; `npm run slips` counts 2,000. */
const LEAST_FLAGGED = 0.93;
const LEAST_RIGHT = 0.95;
const MOST_FALSE_ALARMS = 0.04;

describe.each(bodyKinds)('slips on random %s toys', (kind) => {
  const random = seeded(11);
  const cards = Array.from({ length: TOYS }, (_, n) => randomCard(random, kind, { full: n % 3 === 0 }));
  const { byKind, falseAlarms } = tally(cards, 12);
  const plain = byKind.get('plain') ?? { tried: 0, flagged: 0, right: 0 };

  it('by a factor of two or more are flagged, and the flags point at them', () => {
    expect(plain.tried).toBeGreaterThan(3 * TOYS);
    expect(plain.flagged / plain.tried).toBeGreaterThan(LEAST_FLAGGED);
    expect(plain.right / plain.flagged).toBeGreaterThan(LEAST_RIGHT);
  });

  it('are not seen where there are none', () => {
    expect(falseAlarms.length / TOYS, falseAlarms.join('; ')).toBeLessThan(MOST_FALSE_ALARMS);
  });
});
