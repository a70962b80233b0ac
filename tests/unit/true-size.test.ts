import fc from 'fast-check';
import { expect, test } from 'vitest';
import { partsOf, SHARED_MM } from '../../app/screens/true-size/parts-of';

const size = (max: number) =>
  fc.record({ width: fc.double({ min: 20, max, noNaN: true }), height: fc.double({ min: 20, max, noNaN: true }) });

test('every spot of a piece is seen in some part, and neighbours share crosses that both show whole', () => {
  fc.assert(
    fc.property(
      size(900),
      size(300).map(({ width, height }) => ({ width: width + 40, height: height + 40 })),
      (piece, room) => {
        const { parts, crosses } = partsOf({ left: -7, top: 5, ...piece }, room);
        const shows = (part: { x: number; y: number }, spot: { x: number; y: number }, edge: number) =>
          spot.x >= part.x + edge &&
          spot.x <= part.x + room.width - edge &&
          spot.y >= part.y + edge &&
          spot.y <= part.y + room.height - edge;
        for (const across of [0, 0.31, 0.5, 0.77, 1])
          for (const down of [0, 0.29, 0.5, 0.83, 1]) {
            const spot = { x: -7 + across * piece.width, y: 5 + down * piece.height };
            expect(parts.some((part) => shows(part, spot, -1e-9))).toBe(true);
          }
        parts.slice(1).forEach((part, index) => {
          const before = parts[index] ?? part;
          if (before.y !== part.y) return;
          const both = crosses.filter((cross) => shows(before, cross, 4) && shows(part, cross, 4));
          expect(both.length).toBeGreaterThanOrEqual(2);
          expect(part.x).toBeCloseTo(before.x + room.width - SHARED_MM, 6);
        });
        if (parts.length === 1) expect(crosses).toEqual([]);
      },
    ),
    { numRuns: 200 },
  );
});
