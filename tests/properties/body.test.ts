import { describe, expect, it } from 'vitest';
import { bodyKinds, judge } from '../../app/body';
import { bodyFrom, demoCards } from '../../app/measuring';
import { randomCard, seeded } from '../toys/random';

const impossible = (body: ReturnType<typeof bodyFrom>) =>
  judge(body, {}).filter((flag) => flag.severity === 'impossible');

describe('the rule table', () => {
  it('finds nothing impossible in the demo toys', () => {
    for (const card of demoCards) expect(impossible(bodyFrom(card)), card.toy.name).toEqual([]);
  });

  it.each(bodyKinds)('finds nothing impossible in 1,000 plausible %s toys', (kind) => {
    const random = seeded(1);
    const caught = Array.from({ length: 1000 }, () => impossible(bodyFrom(randomCard(random, kind)))).flat();
    expect(caught.map((flag) => [flag.code, flag.values])).toEqual([]);
  });

  it.each(bodyKinds)('judges %s bodies no maker has without an exception, in finite numbers', (kind) => {
    const random = seeded(2);
    for (let toy = 0; toy < 1000; toy++)
      for (const flag of judge(bodyFrom(randomCard(random, kind, { nasty: true })), {}))
        expect(Object.values(flag.values).every(Number.isFinite)).toBe(true);
  });
});
