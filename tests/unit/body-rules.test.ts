import { describe, expect, it } from 'vitest';
import { flagsOf, type MeasureId, rules } from '../../app/body';
import { bodyFrom } from '../../app/measuring';

type Readings = { readonly [M in MeasureId]?: readonly number[] };
const middling: Readings = {
  'body-girth': [430],
  'chest-girth': [395],
  'front-width': [218],
  'back-width': [212],
  'arm-root-girth': [168],
  'armhole-depth': [72],
  'body-length': [150],
  'arm-length': [128],
  'front-neck-drop': [40],
};
const impossible = (readings: Readings, context = {}) =>
  flagsOf(bodyFrom({ toy: { body: 'upright', traits: {} }, readings: { ...middling, ...readings } }), context)
    .filter((flag) => flag.severity === 'impossible')
    .map((flag) => `${flag.code} ${flag.measures.join()}`);

describe('what cannot be', () => {
  it('leaves a middling toy alone', () => expect(impossible({})).toEqual([]));

  it.each<[string, Readings, string]>([
    ['zero', { 'paw-girth': [0] }, 'not-a-length paw-girth'],
    ['negative', { 'paw-girth': [-3] }, 'not-a-length paw-girth'],
    ['not a number', { 'paw-girth': [Number.NaN] }, 'not-a-length paw-girth'],
    ['over 3 m', { 'paw-girth': [3001] }, 'not-a-length paw-girth'],
    [
      'an armhole as long as the body',
      { 'armhole-depth': [83], 'body-length': [83] },
      'armhole-takes-side armhole-depth,body-length',
    ],
    ['an armhole that leaves only the hem', { 'body-length': [93.9] }, 'armhole-takes-side armhole-depth,body-length'],
    ['a front wider than the girth', { 'front-width': [431] }, 'width-over-girth front-width,body-girth'],
    ['widths that miss the girth', { 'front-width': [306] }, 'widths-off-girth front-width,back-width,body-girth'],
    [
      'an armhole deeper than half its loop',
      { 'armhole-depth': [84.5] },
      'ruler-over-half-girth armhole-depth,arm-root-girth',
    ],
    ['a sleeve no longer than its hem', { 'arm-length': [12] }, 'hem-takes-all arm-length'],
    ['a neckline under the hem', { 'front-neck-drop': [140] }, 'neckline-under-hem front-neck-drop,body-length'],
  ])('flags %s', (_, readings, flag) => expect(impossible(readings)).toContain(flag));

  it.each<[string, Readings]>([
    ['an armhole that just leaves a side', { 'body-length': [94.1] }],
    ['widths that just meet the girth', { 'front-width': [303] }],
    ['an armhole just half its loop', { 'armhole-depth': [84] }],
  ])('lets pass %s', (_, readings) => expect(impossible(readings)).toEqual([]));

  it('looks at the hem the maker chose, and only at what a garment uses', () => {
    expect(impossible({ 'body-length': [94.1] }, { hemAllowance: 13 })).toEqual([
      'armhole-takes-side armhole-depth,body-length',
    ]);
    expect(impossible({ 'paw-girth': [0] }, { measures: new Set(['body-girth']) })).toEqual([]);
  });

  it('never calls an estimate impossible', () => {
    const body = bodyFrom({
      toy: { body: 'upright', traits: {} },
      readings: { 'armhole-depth': [72], 'head-girth': [60] },
    });
    expect(body.sizes['body-length']?.from).toBe('estimate');
    expect(flagsOf(body).filter((flag) => flag.severity === 'impossible')).toEqual([]);
  });

  it('gives every rule a reason and a source', () => {
    for (const rule of rules) expect(rule.why.length * rule.source.length, rule.code).toBeGreaterThan(0);
  });
});
