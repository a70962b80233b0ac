import { describe, expect, test } from 'vitest';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Garment } from '../../app/drafting/garments';
import { bodyFrom, demoCards } from '../../app/measuring';

/** What comes of drafting one of our garments, spoilt, for the first demo toy it suits. */
function drafted(id: string, spoil: (garment: Garment) => Partial<Garment>) {
  const full = fullOrder({ garment: id }, '2026-11-20');
  const card = demoCards.find(({ toy }) => full.ok && full.garment.bodies.includes(toy.body));
  if (!full.ok || !card) throw new RangeError(id);
  return draft(bodyFrom(card), full.order, { ...full.garment, ...spoil(full.garment) }, 'x');
}

/** The garment with one of its sizes made otherwise. */
const sized = (name: string, size: (mm: number) => number) => (garment: Garment) => ({
  sizes: garment.sizes.map((row) => ({
    ...row,
    make: (...given: Parameters<typeof row.make>) => {
      const made = row.make(...given);
      const was = made.sizes[name];
      return was === undefined ? made : { ...made, sizes: { ...made.sizes, [name]: size(was) } };
    },
  })),
});

describe('our own faults are no drafts', () => {
  test('a garment as it is drafts', () => expect(drafted('cape', () => ({})).ok).toBe(true));

  test('a girth of nothing is refused', () => {
    const outcome = drafted(
      'cape',
      sized('capeNeck', () => 0),
    );
    expect(outcome).toMatchObject({ ok: false, flags: [{ code: 'draft-defect' }] });
    expect(outcome.ok ? {} : outcome.flags[0]?.values).toHaveProperty('neck-ease');
  });

  test('ease under nothing without a word why is refused, a hair over nothing is not', () => {
    const under = drafted(
      'cape',
      sized('capeNeck', (mm) => mm * 0.9),
    );
    expect(under.ok ? [] : under.flags.map(({ code }) => code)).toEqual(['draft-defect']);
    const over = drafted('cape', (garment) => ({
      fit: garment.fit.map((row) => ({ ...row, garment: (look) => look.wearer.of(row.measure) + 0.01 })),
    }));
    expect(over.ok).toBe(true);
  });

  test('with a word why it is drafted', () => {
    const outcome = drafted('cape', (garment) => ({
      fit: garment.fit.map((row) => ({ ...row, garment: () => 5, why: () => 'above-the-hip' })),
    }));
    expect(outcome.ok).toBe(true);
  });

  test('a size that nobody gives is thrown, never nothing', () => {
    const without = (name: string) => (garment: Garment) => ({
      sizes: garment.sizes.map((row) => ({ ...row, gives: row.gives.filter((each) => each !== name) })),
    });
    expect(() => drafted('cape', without('capeNeck'))).toThrow('no such size: capeNeck');
    expect(() => drafted('tank', without('neckHalfWidth'))).toThrow('no such size: neckHalfWidth');
    expect(() => drafted('skirt', without('pleats'))).not.toThrow();
  });

  test('a size that a maker promises and does not make is thrown', () => {
    const spoil = (garment: Garment) => ({
      sizes: garment.sizes.map((row) => ({ ...row, gives: [...row.gives, 'x'] })),
    });
    expect(() => drafted('cape', spoil)).toThrow('size not made: x');
  });

  test('a measure that was not asked for is not read', () =>
    expect(() => drafted('cape', () => ({ needs: [{ measure: 'neck-girth' }] }))).toThrow(
      'measure not among the needs',
    ));

  test('a piece or an edge that is not there is thrown', () => {
    const seam = { name: 'x', sewn: 1, first: [{ piece: 'cape', edge: 'tpo' }], second: [] } as const;
    expect(() => drafted('cape', (garment) => ({ seams: [...garment.seams, seam] }))).toThrow('no such edge: cape.tpo');
  });
});
