import { describe, expect, it } from 'vitest';
import { judge, rules } from '../../app/body';
import { bodyFrom } from '../../app/measuring';
import { cases, flagged, nameOf, type Readings } from './rule-cases';

describe('a row of the rule table', () => {
  it.each(cases)('$severity $flag: speaks when broken, and not just before', (each) => {
    expect(flagged(each.breach, each)).toContain(`${each.severity} ${each.flag}`);
    expect(flagged(each.nearMiss, each).filter((flag) => flag.startsWith(each.severity))).toEqual([]);
  });

  it('has a case each', () => {
    const tried = new Set(cases.map(({ flag, severity }) => `${severity} ${flag}`));
    const codes = new Set(cases.map(({ flag, severity }) => `${severity} ${flag.split(' ')[0]}`));
    for (const rule of rules) {
      const { severity, code, measures } = rule;
      expect(
        measures.length > 0 ? tried.has(nameOf(rule)) : codes.has(`${severity} ${code}`),
        `${code} ${measures}`,
      ).toBe(true);
    }
  });

  it('gives a reason and a source', () => {
    for (const rule of rules) expect(rule.why.length * rule.source.length, rule.code).toBeGreaterThan(0);
  });

  it('comes after those that weigh more: impossible first, notes last', () => {
    const rank = { impossible: 0, unlikely: 1, note: 2 };
    const ranks = rules.map((rule) => rank[rule.severity]);
    expect(ranks).toEqual([...ranks].sort());
  });
});

describe('a length', () => {
  it.each([
    ['negative', -3],
    ['not a number', Number.NaN],
    ['over 3 m', 3001],
  ])('%s is none', (_, value) =>
    expect(flagged({ 'paw-girth': value })).toEqual(['impossible not-a-length paw-girth']),
  );

  it('of 3 m is one', () => expect(flagged({ 'paw-girth': 3000 })).toEqual([]));
});

describe('what an order takes at the hem', () => {
  const skirt: Readings = { 'waist-to-hem': 11 };
  const taken = ['impossible hem-takes-all waist-to-hem'];

  it('is as the maker says, else as the cloth asks', () => {
    expect(flagged(skirt, {}, {})).toEqual(taken);
    expect(flagged(skirt, {}, { cloth: 'felt' })).toEqual([]);
    expect(flagged(skirt, {}, { cloth: 'felt', allowances: { hem: 11 } })).toEqual(taken);
    expect(flagged(skirt, {}, { allowances: { hem: 10 } })).toEqual([]);
  });

  it('is nothing at a raw edge, and the casing at one', () => {
    expect(flagged(skirt, {}, { choices: { hem: 'raw' } })).toEqual([]);
    expect(flagged({ 'waist-to-hem': 13 }, {}, { choices: { hem: 'casing' } })).toEqual(taken);
    expect(flagged({ 'waist-to-hem': 13 }, {}, { choices: { hem: 'turned' } })).toEqual([]);
  });
});

describe('only firm numbers accuse', () => {
  it('an estimate is never impossible, nor evidence against a reading', () => {
    const flags = flagged({ 'armhole-depth': 72, 'head-girth': 60 });
    expect(flags.filter((flag) => flag.startsWith('impossible'))).toEqual([]);
    expect(flagged({ 'upper-arm-girth': 100 })).toEqual([]);
  });

  it('what a garment does not use is not judged', () => {
    const body = bodyFrom({ toy: { body: 'upright', traits: {} }, readings: { 'paw-girth': [0] } });
    expect(judge(body, {}, { measures: new Set(['body-girth']) })).toEqual([]);
  });

  it('a thick neck passes where there is no clear one', () => {
    const thick: Readings = { 'neck-girth': 301, 'head-girth': 300 };
    expect(flagged(thick, { traits: { neck: 'none' } })).toEqual([]);
  });

  it('a short armhole is doubted on a hip-length top alone', () => {
    const share = 'unlikely armhole-share armhole-depth,body-length';
    const long = 152;
    expect(
      flagged({ 'armhole-depth': 31, 'body-length': 160, 'chest-girth': 340, 'back-body-length': long }),
    ).toContain(share);
    expect(
      flagged({ 'armhole-depth': 34, 'body-length': 160, 'chest-girth': 340, 'back-body-length': long }),
    ).not.toContain(share);
    expect(flagged({ 'armhole-depth': 60, 'body-length': 330, 'chest-girth': 340 })).not.toContain(share);
  });
});
