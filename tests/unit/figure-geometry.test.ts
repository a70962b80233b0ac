import { describe, expect, it } from 'vitest';
import { distance, point } from '../../app/body/point';
import { bandRound } from '../../app/measuring/figure/band';
import { across, along, crossings } from '../../app/measuring/figure/outline';
import { oval } from '../../app/measuring/figure/shapes';
import { smoothPoints } from '../../app/measuring/figure/smooth';
import { stretchOf } from '../../app/measuring/figure/stretch';
import { typicalKnowns } from './figure-support';

const RADIUS = 50;
/** Eight smooth points are a circle to the eye: within a quarter of the ink line. */
const ROUND = 0.6;

const circle = smoothPoints(oval(point(0, 0), RADIUS, RADIUS), true);

describe('outlines', () => {
  it('are round where they should be', () => {
    for (const here of circle) expect(Math.abs(distance(here, point(0, 0)) - RADIUS)).toBeLessThan(ROUND);
    expect(Math.abs(distance(point(RADIUS + 2 * ROUND, 0), point(0, 0)) - RADIUS)).toBeGreaterThan(ROUND);
  });

  it('are crossed at both edges, in the order of the direction', () => {
    const [left, right] = across(circle, point(0, 30), point(1, 0));
    expect(left.x).toBeCloseTo(-40, 0);
    expect(right.x).toBeCloseTo(40, 0);
    expect(across(circle, point(0, 30), point(-1, 0))[0].x).toBeCloseTo(40, 0);
  });

  it('give the place itself where a line misses them', () => {
    expect(across(circle, point(0, 80), point(1, 0))).toEqual([point(0, 80), point(0, 80)]);
  });

  it('are followed past the place named, not the other way round', () => {
    const over = along(circle, point(-RADIUS, 0), point(RADIUS, 0), point(0, -RADIUS));
    expect(Math.min(...over.map(({ y }) => y))).toBeCloseTo(-RADIUS, 0);
    expect(Math.max(...over.map(({ y }) => y))).toBeLessThan(1);
  });

  it('cross each other as often as two circles do', () => {
    const beside = circle.map(({ x, y }) => point(x + 60, y));
    expect(crossings(circle, beside)).toHaveLength(2);
    expect(
      crossings(
        circle,
        circle.map(({ x, y }) => point(x + 110, y)),
      ),
    ).toHaveLength(0);
  });
});

describe('a band round a part', () => {
  const { near, far } = bandRound(circle, point(0, 0), point(0, 99), 14);
  it('ends at the edges and sags toward where it is told', () => {
    expect(near.above[0]?.x).toBeLessThan(-RADIUS + 3);
    expect(near.above.at(-1)?.x).toBeGreaterThan(RADIUS - 3);
    const middle = Math.floor(near.above.length / 2);
    expect(near.below[middle]?.y ?? 0).toBeGreaterThan(far.below[middle]?.y ?? 0);
    expect(distance(near.above[middle] ?? point(0, 0), near.below[middle] ?? point(0, 0))).toBeCloseTo(14, 6);
  });
});

describe('how a part is stretched', () => {
  const right = typicalKnowns('upright');
  const wrong = { ...right, 'paw-girth': { value: 2.54 * 165, from: 'tape', give: 2 } } as const;

  it('is not at all on the typical toy, whatever its size', () => {
    expect(stretchOf('upright', {})('paw-girth')).toBe(1);
    expect(stretchOf('upright', typicalKnowns('upright', 0.3))('paw-girth')).toBeCloseTo(1, 9);
  });

  it('shows a wrong number on its own part, and on no other', () => {
    expect(stretchOf('upright', wrong)('paw-girth')).toBeGreaterThan(1.7);
    expect(stretchOf('upright', wrong)('upper-arm-girth')).toBeCloseTo(1, 9);
    expect(stretchOf('upright', wrong)('head-girth')).toBeCloseTo(1, 9);
  });

  it('never leaves what can be drawn', () => {
    for (const value of [1e-6, 1e9]) {
      const by = stretchOf('upright', { ...right, 'paw-girth': { value, from: 'tape', give: 2 } });
      expect(by('paw-girth')).toBeGreaterThan(0.47);
      expect(by('paw-girth')).toBeLessThan(2.11);
    }
  });
});
