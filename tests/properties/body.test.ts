import { describe, expect, it } from 'vitest';
import { flagsOf } from '../../app/body';
import { bodyFrom, demoCards } from '../../app/measuring';
import { randomCard, seeded } from '../toys/random';

const impossible = (body: ReturnType<typeof bodyFrom>) =>
  flagsOf(body).filter((flag) => flag.severity === 'impossible');

describe('the rule table', () => {
  it('finds nothing impossible in the demo toys', () => {
    for (const card of demoCards) expect(impossible(bodyFrom(card)), card.toy.name).toEqual([]);
  });

  it('finds nothing impossible in 2,000 plausible toys', () => {
    const random = seeded(1);
    const caught = Array.from({ length: 2000 }, () => impossible(bodyFrom(randomCard(random, 'upright')))).flat();
    expect(caught.map((flag) => [flag.code, flag.values])).toEqual([]);
  });

  it('judges bodies no maker has without an exception, in finite numbers', () => {
    const random = seeded(2);
    for (let toy = 0; toy < 2000; toy++)
      for (const flag of flagsOf(bodyFrom(randomCard(random, 'upright', { nasty: true }))))
        expect(Object.values(flag.values).every(Number.isFinite)).toBe(true);
  });
});
