import { describe, expect, test } from 'vitest';
import type { Traits } from '../../app/body';
import { raglanSleeve } from '../../app/drafting/blocks/raglan';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import {
  angleBetween,
  curvature,
  endTangent,
  pathLength,
  pointAtLength,
  startTangent,
} from '../../app/drafting/geometry';
import { guideOf } from '../../app/drafting/guide';
import { bodyFrom } from '../../app/measuring';
import { edgeNamed, lengthNamed, made, reading } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const raglan = (build: number, arms: Traits['arms'], more: Partial<Traits> = {}) => {
  const card = buildCard(builds[build] as (typeof builds)[number], { arms, ...more });
  const draft = made(card, 'tee', { choices: { armhole: 'raglan', sleeve: 'long', opening: 'back' } }) as Draft;
  return { card, draft, long: (edge: string) => lengthNamed(draft, 'sleeve', edge) };
};
const neckOf = ({ long }: ReturnType<typeof raglan>) => long('neck-front') + long('neck-back');
const seams = ({ draft }: ReturnType<typeof raglan>) => draft.seams.map(({ name }) => name);

/** How far an edge turns between its first third and its last, radians. */
const turnsBetween = (draft: Draft, piece: string, edge: string) => {
  const path = edgeNamed(draft, piece, edge)?.path ?? [];
  const [one, other] = [1, 2].map((n) => pointAtLength(path, (pathLength(path) * n) / 3).tangent);
  return one && other ? angleBetween(one, other) : Number.NaN;
};

// Hollow all along (the sleeve's turned by 0.4 there) they drew the chest together: sewn up on simulated toys the front strained half as much again.
test.each(builds.map(({ name }, build) => [name, build] as const))(
  'its seams run straight between their ends: %s',
  (_, build) => {
    const { draft } = raglan(build, 'out');
    for (const side of ['front', 'back']) {
      expect(turnsBetween(draft, side, 'armhole'), side).toBeLessThan(0.3);
      expect(turnsBetween(draft, 'sleeve', `${side}-raglan`), side).toBeLessThan(0.3);
    }
  },
);

/** Builds with a shoulder: the rabbit and the huge one. */
describe.each([1, 4])('build %i, its arms hanging', (build) => {
  const [hanging, out] = [raglan(build, 'down'), raglan(build, 'out')];

  test('a dart runs from the neck to the point of the shoulder, its edges alike', () => {
    expect(hanging.long('dart-front')).toBeCloseTo(reading(hanging.card, 'shoulder-length'), 3);
    expect(hanging.long('dart-back')).toBeCloseTo(hanging.long('dart-front'), 3);
    expect(seams(hanging)).toContain('shoulder-dart');
    expect(seams(out)).not.toContain('shoulder-dart');
    for (const arms of ['forward', 'up'] as const)
      expect(seams(raglan(build, arms)), arms).not.toContain('shoulder-dart');
  });

  test('sewn, the neck is as long as without it, and runs straight on across it', () => {
    expect(neckOf(hanging)).toBeCloseTo(neckOf(out), 6);
    const path = (edge: string) => edgeNamed(hanging.draft, 'sleeve', edge)?.path ?? [];
    const turns = [
      [path('neck-front'), path('dart-front')],
      [path('dart-back'), path('neck-back')],
    ] as const;
    for (const [one, next] of turns)
      expect(angleBetween(endTangent(one), startTangent(next))).toBeCloseTo(Math.PI / 2, 4);
  });

  test('from neck to wrist outside it is as long as shoulder and arm, and no armhole was deepened for it', () => {
    const outside = (made: typeof hanging) =>
      made.long('dart-front') + made.long('over-arm') - reading(made.card, 'shoulder-length');
    const cap = reading(hanging.card, 'arm-length') - reading(hanging.card, 'underarm-length');
    expect(outside(hanging)).toBeGreaterThanOrEqual(cap - 0.01);
    expect(outside(hanging)).toBeLessThan(cap + 0.1 * reading(hanging.card, 'arm-length'));
    expect(hanging.draft.adjustments.map(({ code }) => code)).not.toContain('armhole-deepened');
  });

  test('it is sewn while the sleeve is flat, before it meets front and back', () => {
    const order = hanging.draft.sewing.flatMap((step) => step.seams);
    expect(order.indexOf('shoulder-dart')).toBeLessThan(order.indexOf('front-raglan'));
    expect(guideOf(hanging.draft).steps.find(({ kind }) => kind === 'dart-open')?.first).toEqual(['sleeve']);
  });
});

test('a shoulder too short or sloped for a dart worth sewing has none', () => {
  // 11 mm long and sloped by 20°: a dart would take in 6.2 mm (by hand: 2·11·sin 16.25°); as sloped and 5 % shorter, too little.
  expect(raglan(3, 'down').long('dart-front')).toBeCloseTo(11, 3);
  expect(seams(raglan(3, 'down', { shoulders: 'none' }))).not.toContain('shoulder-dart');
  expect(seams(raglan(0, 'down'))).not.toContain('shoulder-dart');
});

test('a dart that the sleeve leaves no room for, under 2 mm wide at the neck, is eased in and not drawn', () => {
  const sizes = {
    bicep: 200,
    cuff: 180,
    underarmLength: 120,
    frontRaglan: 90,
    backRaglan: 92,
    neckBefore: 14,
    neckBehind: 16,
  };
  const drawn = (dartTurn: number) => raglanSleeve.draw({ ...sizes, dartLong: 30, dartTurn }).edges;
  expect(drawn(0.3)['dart-front']).toBeDefined();
  expect(drawn(0.03)['dart-front']).toBeUndefined();
});

/** Turned more tightly than a cord's breadth (mm, common practice, no source) a seam of 5 mm cannot be sewn round without a tuck. */
const LEAST_TURN_MM = 3.5;

// Tried on and let out under the arm, a side that leans out had it run into a hook.
test.each(builds.map((build) => [build.name, build] as const))(
  'its body turns smoothly into the underarm, deeper ones too: %s',
  (_, build) => {
    const order = fullOrder({ garment: 'tee', choices: { armhole: 'raglan' } }, '2026-11-20');
    if (!order.ok) return expect.fail(order.fault.code);
    const body = bodyFrom(buildCard(build));
    for (const armholeDepth of [0, 10]) {
      const outcome = draft({ ...body, corrections: { armholeDepth } }, order.order, order.garment, build.name);
      for (const curve of (outcome.ok ? edgeNamed(outcome.draft, 'front', 'armhole')?.path : null) ?? [])
        for (const t of [0.5, 0.6, 0.7, 0.8, 0.9, 1])
          expect(1 / Math.abs(curvature(curve, t)), `${armholeDepth}, ${t}`).toBeGreaterThan(LEAST_TURN_MM);
    }
  },
);
