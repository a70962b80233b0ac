import { describe, expect, it } from 'vitest';
import { type Body, bodyKinds, findMeasure, type MeasureId, measures, usualTraits } from '../../app/body';
import { bodyFrom, plan } from '../../app/measuring';

const empty = (kind: Body['kind'] = 'upright'): Body => ({ kind, traits: usualTraits, sizes: {}, corrections: {} });
const asked = (needs: readonly MeasureId[], ...rest: [Body?, Parameters<typeof plan>[2]?]) =>
  plan(needs, rest[0] ?? empty(), rest[1]).steps.map((step) => step.measure);

describe('the plan', () => {
  it.each(bodyKinds)('asks for everything a %s toy has, nothing twice, and turns it twice at most', (kind) => {
    const ids = measures.map((measure) => measure.id);
    const { steps, turns, worksOut } = plan([...ids, ...ids], empty(kind));
    const all = [...steps.map((step) => step.measure), ...worksOut];
    expect(new Set(all).size).toBe(all.length);
    expect([...all].sort()).toEqual(ids.filter((id) => findMeasure(id)?.typical[kind]).sort());
    expect(turns).toBeLessThanOrEqual(2);
  });

  it('goes round the toy from the head, and asks for wishes last', () => {
    const order = asked(['arm-length', 'thigh-girth', 'paw-girth', 'head-girth', 'neck-girth', 'back-neck-drop']);
    expect(order).toEqual(['head-girth', 'neck-girth', 'paw-girth', 'thigh-girth', 'arm-length', 'back-neck-drop']);
  });

  it('asks for what a step speaks of before it', () =>
    expect(asked(['strap-length', 'bodice-height'])).toEqual(['bodice-height', 'strap-length']));

  it('works out what follows exactly, the part behind where it can', () => {
    const widths = ['body-girth', 'front-width', 'back-width'] as const;
    expect(plan(widths, empty())).toMatchObject({ worksOut: ['back-width'], turns: 0 });
    expect(plan(widths, empty(), { done: ['back-width'] }).worksOut).toEqual(['body-girth']);
    expect(plan(widths, empty(), { skipped: ['front-width'] }).worksOut).toEqual([]);
  });

  it('keeps its steps in place whatever is done or skipped', () => {
    const needs = ['head-girth', 'hood-depth', 'arm-length'] as const;
    const progress = { done: ['head-girth'], skipped: ['hood-depth'] } as const;
    const { steps } = plan(needs, empty(), progress);
    expect(steps.map((step) => step.measure)).toEqual(asked(needs));
    expect(steps.map((step) => step.state)).toEqual(['done', 'skipped', 'open']);
  });

  it('counts what the body has from the tape as done', () => {
    const body = bodyFrom({ toy: { body: 'upright', traits: {} }, readings: { 'head-girth': [430] } });
    const { steps } = plan(['head-girth', 'arm-length'], body);
    expect(steps.map((step) => step.state)).toEqual(['done', 'open']);
  });

  it('suggests wishes from the measures so far, and only wishes', () => {
    const body = bodyFrom({ toy: { body: 'upright', traits: {} }, readings: { 'head-girth': [430] } });
    const [taped, wished] = plan(['paw-girth', 'arm-length'], body).steps;
    expect(taped?.suggested).toBeNull();
    expect(wished?.suggested?.value).toBeGreaterThan(50);
    expect(plan(['arm-length'], empty()).steps[0]?.suggested).toBeNull();
  });

  it('leaves out what the kind does not have', () =>
    expect(asked(['belly-girth', 'head-girth'])).toEqual(['head-girth']));
});
