import { describe, expect, it } from 'vitest';
import { type MeasureId, mostTelling, usualTraits } from '../../app/body';
import { bodyFrom } from '../../app/measuring';

const unread = { kind: 'upright', traits: usualTraits, sizes: {} } as const;
const trunk: readonly MeasureId[] = ['chest-girth', 'body-girth', 'waist-girth', 'hip-girth', 'neck-girth'];

const after = (readings: { readonly [M in MeasureId]?: readonly number[] }, asked = trunk, count = 3) =>
  mostTelling(bodyFrom({ toy: { body: 'upright', traits: {} }, readings }), { needs: trunk, asked, count });

describe('the numbers that tell most', () => {
  it('are as many as asked for, the first of them making most surer', () => {
    const told = mostTelling(unread, { needs: trunk, asked: trunk, count: 3 });
    expect(told).toHaveLength(3);
    const each = trunk.map((id) => mostTelling(unread, { needs: trunk, asked: [id], count: 1 })[0]?.shrinks ?? 0);
    expect(told[0]?.shrinks).toBeCloseTo(Math.max(...each), 9);
    for (const { shrinks } of told) expect(shrinks > 0 && shrinks < 1).toBe(true);
  });

  it('are none that are taken already', () => {
    const told = after({ 'chest-girth': [390], 'body-girth': [430] });
    expect(told.map(({ measure }) => measure)).not.toContain('chest-girth');
    expect(told.map(({ measure }) => measure)).not.toContain('body-girth');
  });

  it('tell less of what is known from others, and nothing where all is taken', () => {
    const [fresh] = mostTelling(unread, { needs: trunk, asked: ['body-girth'], count: 1 });
    const [late] = after({ 'chest-girth': [390] }, ['body-girth'], 1);
    expect(late?.shrinks).toBeLessThan(fresh?.shrinks ?? 0);
    expect(after(Object.fromEntries(trunk.map((id) => [id, [400]])))).toEqual([]);
  });

  it('are not those that have nothing to do with what is needed', () => {
    const told = mostTelling(unread, { needs: ['ear-base'], asked: ['ear-base', 'foot-girth'], count: 2 });
    expect(told[0]?.measure).toBe('ear-base');
    expect(told[1]?.shrinks ?? 0).toBeLessThan(0.1);
  });
});
