import { describe, expect, it } from 'vitest';
import { fromSvg, line, PathDataError, point, toSvg } from '../../app/drafting/geometry';

// The grammar of path data: W3C SVG 2, section 9.3.

describe('SVG path data', () => {
  it('is read with H and V, signs without spaces, exponents and repeated commands', () => {
    const square = 'M0 0L10 0L10 10L0 10Z';
    expect(toSvg(fromSvg('M0,0H10V10H0Z'), { closed: true })).toBe(square);
    expect(toSvg(fromSvg(' M 0 0 10 0 10 1e1 0,10 Z '), { closed: true })).toBe(square);
    expect(toSvg(fromSvg('M0-0.5L-.25-3'))).toBe('M0 -0.5L-0.25 -3');
  });

  it('is written without exponents or a minus zero', () => {
    expect(toSvg([line(point(-0.00001, 1e-7), point(123.456789, -2))])).toBe('M0 0L123.4568 -2');
  });

  it.each(['L1 1', 'M0 0M1 1', 'M0 0l1 1', 'M0 0L1', 'M0 0C1 1 2 2', 'M0 0L1 x', 'M0', '5', 'M0 0Z5'])(
    'is refused by its place: %s',
    (text) => {
      expect(() => fromSvg(text)).toThrow(PathDataError);
    },
  );
});
