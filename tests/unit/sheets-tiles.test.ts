import { describe, expect, test } from 'vitest';
import { flatten } from '../../app/drafting/geometry';
import { layOut, moved } from '../../app/drafting/sheets';
import { handMade } from '../toys/drafts';
import { paper, tiles } from './sheets-overlap';

describe('tiles', () => {
  const draft = handMade(2.6);
  const layout = layOut(draft, paper('a4'), { effort: 12, seed: 1 });

  test('have names of their own, by row and column', () => {
    const names = layout.pages.map((page) => page.name);
    expect(new Set(names).size).toBe(names.length);
    for (const page of tiles(layout)) expect(page.name).toMatch(/^[A-Z]+[1-9]\d*$/);
  });

  test('together show every point of their piece, and small pieces keep out of the overlaps', () => {
    for (const [index, piece] of draft.pieces.entries()) {
      const shown = tiles(layout).filter((page) => page.tile?.piece === index);
      if (shown.length === 0) continue;
      for (const point of [piece.cutLine, piece.seamLine].flatMap((path) => flatten(path, 0.1))) {
        const visible = shown.some((page) => {
          const placed = page.placed.find((each) => each.piece === index && each.window);
          const window = placed?.window;
          const { x, y } = placed ? moved(placed.move)(point) : point;
          return (
            window &&
            x >= window.x - 1e-9 &&
            x <= window.x + window.width + 1e-9 &&
            y >= window.y - 1e-9 &&
            y <= window.y + window.height + 1e-9
          );
        });
        expect(visible).toBe(true);
      }
    }
  });

  test('crosses lie on the same spot of the piece on every page that shares them', () => {
    for (const index of draft.pieces.keys()) {
      const onPiece = tiles(layout)
        .filter((page) => page.tile?.piece === index)
        .flatMap((page) => {
          const move = page.placed[0]?.move ?? expect.fail('a tile shows its piece');
          return (page.tile?.crosses ?? []).map((cross) => ({ x: cross.x - move.x, y: cross.y - move.y }));
        });
      for (const cross of onPiece) {
        const met = onPiece.filter((other) => Math.hypot(other.x - cross.x, other.y - cross.y) < 1e-6);
        expect(met.length).toBeGreaterThanOrEqual(2);
      }
    }
  });

  test('the first page maps them all', () => {
    const map = layout.pages[0]?.cover?.map ?? [];
    expect(map.map((cell) => cell.page).sort((a, b) => a - b)).toEqual([...layout.pages.keys()]);
    for (const [i, a] of map.entries())
      for (const b of map.slice(i + 1))
        expect(
          a.box.x + a.box.width <= b.box.x ||
            b.box.x + b.box.width <= a.box.x ||
            a.box.y + a.box.height <= b.box.y ||
            b.box.y + b.box.height <= a.box.y,
        ).toBe(true);
  });
});
