import { describe, expect, it } from 'vitest';
import { judge, type MeasureId, type RuleContext, rules, type Severity, type Traits } from '../../app/body';
import { bodyFrom } from '../../app/measuring';

type Readings = { readonly [M in MeasureId]?: readonly number[] };
const middling: Readings = {
  'head-girth': [432],
  'neck-girth': [265],
  'chest-girth': [395],
  'body-girth': [430],
  'front-width': [218],
  'back-width': [212],
  'shoulder-length': [22],
  'side-inset': [20],
  'armhole-depth': [72],
  'arm-root-girth': [184],
  'upper-arm-girth': [178],
  'paw-girth': [165],
  'body-length': [150],
  'arm-length': [128],
  'underarm-length': [96],
  'front-neck-drop': [45],
  'back-neck-drop': [15],
};

/** Codes and measures of the flags of one severity; measures in alphabetical order, since the model orders them. */
function flagged(
  severity: Severity,
  readings: Readings,
  { traits = {}, ...context }: Partial<RuleContext> & { traits?: Partial<Traits> } = {},
): readonly string[] {
  const body = bodyFrom({ toy: { body: 'upright', traits }, readings: { ...middling, ...readings } });
  return judge(body, context)
    .filter((flag) => flag.severity === severity)
    .map(({ code, measures }) => `${code} ${[...measures].sort().join()}`);
}

describe('a middling toy', () => {
  it.each(['impossible', 'unlikely', 'note'] as const)('has nothing %s', (severity) =>
    expect(flagged(severity, {})).toEqual([]),
  );
});

describe('what cannot be', () => {
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
    ['a front wider than the girth', { 'front-width': [431] }, 'width-over-girth body-girth,front-width'],
    ['widths that miss the girth', { 'front-width': [306] }, 'widths-off-girth back-width,body-girth,front-width'],
    [
      'an armhole deeper than half its loop',
      { 'armhole-depth': [92.5] },
      'ruler-over-half-girth arm-root-girth,armhole-depth',
    ],
    ['a sleeve no longer than its hem', { 'arm-length': [12] }, 'hem-takes-all arm-length'],
    ['a neckline under the hem', { 'front-neck-drop': [140] }, 'neckline-under-hem body-length,front-neck-drop'],
  ])('flags %s', (_, readings, flag) => expect(flagged('impossible', readings)).toContain(flag));

  it.each<[string, Readings]>([
    ['an armhole that just leaves a side', { 'body-length': [94.1] }],
    ['widths that just meet the girth', { 'front-width': [303] }],
    ['an armhole just half its loop', { 'armhole-depth': [92] }],
  ])('lets pass %s', (_, readings) => expect(flagged('impossible', readings)).toEqual([]));

  it('looks at the hem the maker chose, and only at what a garment uses', () => {
    expect(flagged('impossible', { 'body-length': [94.1] }, { hemAllowance: 13 })).toEqual([
      'armhole-takes-side armhole-depth,body-length',
    ]);
    expect(flagged('impossible', { 'paw-girth': [0] }, { measures: new Set(['body-girth']) })).toEqual([]);
  });

  it('never calls an estimate impossible', () => {
    const readings = { 'armhole-depth': [72], 'head-girth': [60] };
    const body = bodyFrom({ toy: { body: 'upright', traits: {} }, readings });
    expect(body.sizes['body-length']?.from).toBe('estimate');
    expect(judge(body).filter((flag) => flag.severity === 'impossible')).toEqual([]);
  });
});

describe('what is unlikely', () => {
  it.each<[string, Readings, string]>([
    ['widths a little off the girth', { 'front-width': [241] }, 'widths-off-girth back-width,body-girth,front-width'],
    ['an underarm longer than the arm', { 'underarm-length': [139] }, 'underarm-over-arm arm-length,underarm-length'],
    [
      'an armhole that does not go round its root',
      { 'side-inset': [52] },
      'armhole-off-root arm-root-girth,armhole-depth,side-inset',
    ],
    ['an armhole of a third of the top', { 'armhole-depth': [50] }, 'armhole-share armhole-depth,body-length'],
    [
      'shoulders wider than the chest',
      { 'shoulder-length': [54.5] },
      'shoulders-over-chest chest-girth,neck-girth,shoulder-length',
    ],
    ['a clear neck thicker than the head', { 'neck-girth': [433] }, 'neck-over-head head-girth,neck-girth'],
    [
      'a neckline lower at the back',
      { 'back-neck-drop': [46] },
      'back-neck-under-front back-neck-drop,front-neck-drop',
    ],
    ['two readings far apart', { 'paw-girth': [160, 168] }, 'readings-apart paw-girth'],
  ])('flags %s', (_, readings, flag) => {
    const heard = flagged('unlikely', readings, { readings });
    expect(
      heard.some((each) => each === flag || /^(proportion|swapped|unit-slip) /.test(each)),
      heard.join(),
    ).toBe(true);
  });

  it.each<[string, Readings]>([
    ['widths off by less than 5 %', { 'front-width': [239] }],
    ['two readings 4 % apart', { 'paw-girth': [160, 166] }],
    ['a third reading that decided', { 'paw-girth': [160, 180, 162] }],
    ['an underarm as long as the arm', { 'underarm-length': [138] }],
  ])('lets pass %s', (_, readings) =>
    expect(flagged('unlikely', readings, { readings, traits: { arms: 'up' } })).toEqual([]),
  );

  it('tells of a straight-topped sleeve without asking', () =>
    expect(flagged('note', { 'underarm-length': [136] }, { traits: { arms: 'up' } })).toEqual([
      'straight-topped-sleeve arm-length,underarm-length',
    ]));

  it('lets a thick neck pass where there is no clear one', () =>
    expect(flagged('unlikely', { 'neck-girth': [433] }, { traits: { neck: 'none' } })).not.toContain(
      'neck-over-head head-girth,neck-girth',
    ));
});

describe('the table', () => {
  it('gives every rule a reason and a source', () => {
    for (const rule of rules) expect(rule.why.length * rule.source.length, rule.code).toBeGreaterThan(0);
  });

  it('has the impossible first, the notes last', () => {
    const rank = { impossible: 0, unlikely: 1, note: 2 };
    const ranks = rules.map((rule) => rank[rule.severity]);
    expect(ranks).toEqual([...ranks].sort());
  });
});
