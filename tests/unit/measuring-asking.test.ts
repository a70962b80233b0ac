import { describe, expect, it } from 'vitest';
import { bodyKinds, type MeasureId, measureIds, usualTraits } from '../../app/body';
import { heads } from '../../app/drafting/catalogue';
import { asking, isWish, marksFor } from '../../app/measuring';

const upright = { kind: 'upright', traits: usualTraits } as const;
const needOf = (measure: MeasureId) => ({ measure });
const quiet = (measure: MeasureId) => ({ measure, quiet: true }) as const;

describe('what a maker is asked for', () => {
  it('begins with the height, then the tape, and ends with wishes', () => {
    const { asked } = asking(
      upright,
      ['arm-length', 'chest-girth', 'neck-girth'].map((id) => needOf(id as MeasureId)),
    );
    expect(asked).toEqual(['height', 'chest-girth', 'neck-girth', 'arm-length']);
  });

  it('leaves out what is quiet, unless something else asks for it aloud, and what the kind does not have', () => {
    const needs = [
      needOf('chest-girth'),
      quiet('neck-girth'),
      quiet('hip-girth'),
      needOf('hip-girth'),
      needOf('belly-girth'),
    ];
    const { needs: all, asked, guessed } = asking(upright, needs);
    expect(all).toEqual(['chest-girth', 'neck-girth', 'hip-girth']);
    expect(asked).toEqual(['height', 'chest-girth', 'hip-girth']);
    expect(guessed).toEqual(['neck-girth']);
  });

  const garments = heads.filter(({ bodies }) => bodies.includes('upright'));
  it.each(garments.map((head) => [head.id, head] as const))(
    'the short way of %s: eight screens, and every wish',
    (_, head) => {
      const choices = Object.fromEntries(Object.entries(head.choices).map(([name, { fallback }]) => [name, fallback]));
      const needs = head.needs.filter(({ when }) => when?.(choices) ?? true);
      const [whole, short] = [asking(upright, needs), asking(upright, needs, 'short')];
      const taped = short.asked.filter((id) => !isWish(id));
      expect(taped.length + 1).toBeLessThanOrEqual(8);
      expect(short.asked.filter(isWish)).toEqual(whole.asked.filter(isWish));
      expect(whole.asked).toEqual(expect.arrayContaining([...short.asked]));
      expect(short.asked.includes('head-girth')).toBe(whole.asked.includes('head-girth'));
      expect([...short.asked, ...short.guessed]).toEqual(expect.arrayContaining([...short.needs]));
    },
  );
});

describe('marks', () => {
  it('are put on only where a measure speaks of them', () => {
    expect(marksFor('upright', ['paw-girth'])).toEqual([]);
    expect(marksFor('upright', ['neck-girth'])).toEqual(['neck']);
    expect(marksFor('upright', ['hem-girth', 'waist-girth'])).toEqual(['waist', 'hem']);
    expect(marksFor('upright', ['face-edge'])).toEqual(['hood']);
  });

  it.each(bodyKinds)('of a %s toy keep their order, whatever is measured', (kind) => {
    const all = marksFor(kind, measureIds);
    for (const id of measureIds) {
      const some = marksFor(kind, [id]);
      expect(some).toEqual(all.filter((mark) => some.includes(mark)));
    }
  });
});
