import { describe, expect, test } from 'vitest';
import type { Piece } from '../../app/drafting/draft-types';
import { flatten, type Path, type Point, rotate, transformPath } from '../../app/drafting/geometry';
import { layOut, moved } from '../../app/drafting/sheets';
import { handMade, oblong } from '../toys/drafts';
import { seeded } from '../toys/seeded';
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

test('every point of an outline lies on a page: random oblongs, each in four turns, on any paper', () => {
  const random = seeded(11);
  for (let each = 0; each < 6; each++) {
    const [long, short] = [300 + random() * 600, 20 + random() * 400];
    for (const quarter of [0, 1, 2, 3]) {
      const size = paper(['a4', 'letter'][each % 2] ?? 'a4');
      const piece = turnedOblong(long, short, (quarter * Math.PI) / 2 + (each % 3 === 0 ? 0.3 : 0));
      const layout = layOut(handMade(1, { pieces: [piece] }), size, { effort: 1, seed: each });
      for (const corner of between(piece.cutLine, 3)) {
        const shown = layout.pages.some((page) =>
          page.placed.some(({ move, window }) => {
            const { x, y } = moved(move)(corner);
            const box = window ?? { x: 0, y: 0, width: page.width, height: page.height };
            const clear = 1e-6;
            return (
              x >= box.x - clear &&
              x <= box.x + box.width + clear &&
              y >= box.y - clear &&
              y <= box.y + box.height + clear
            );
          }),
        );
        expect(shown, `${long} × ${short}, turned ${quarter}, at ${corner.x}, ${corner.y}`).toBe(true);
      }
      for (const page of tiles(layout)) {
        const box = page.tile?.window ?? expect.fail('a tile has a window');
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(page.width);
        expect(box.y + box.height).toBeLessThanOrEqual(page.height);
      }
    }
  }
});

test('neighbouring pages show the same 10 mm of the piece', () => {
  const layout = layOut(handMade(1, { pieces: [oblong('wide', 420, 300)] }), paper('a4'), { effort: 1, seed: 1 });
  const pages = tiles(layout);
  expect(pages.length).toBeGreaterThan(1);
  for (const page of pages) {
    const right = pages.find((other) => other.name === page.tile?.joins.right);
    if (!right) continue;
    const [here, there] = [page.placed[0]?.move, right.placed[0]?.move];
    const window = page.tile?.window ?? expect.fail('a tile has a window');
    expect(window.width - ((here?.x ?? 0) - (there?.x ?? 0))).toBeCloseTo(10, 6);
  }
});

/** An oblong whose own outline is turned, about its corner. */
function turnedOblong(width: number, height: number, turn: number): Piece {
  const piece = oblong('oblong', width, height);
  const about = (p: Point) => rotate(p, turn);
  const path = (each: Path) => transformPath(each, about);
  return {
    ...piece,
    edges: piece.edges.map((edge) => ({ ...edge, path: path(edge.path) })),
    seamLine: path(piece.seamLine),
    cutLine: path(piece.cutLine),
    grain: [about(piece.grain[0]), about(piece.grain[1])],
  };
}

/** Points along a path of straight lines, at most so far apart, mm. */
const between = (path: Path, apart: number): Point[] =>
  path.flatMap(({ from, to }) => {
    const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / apart);
    return Array.from({ length: steps }, (_, at) => ({
      x: from.x + ((to.x - from.x) * at) / steps,
      y: from.y + ((to.y - from.y) * at) / steps,
    }));
  });

test('a piece lies on its pages by quarters of what they have to spare', () => {
  const piece = oblong('wide', 420, 300);
  const layout = layOut(handMade(1, { pieces: [piece] }), paper('a4'), { effort: 1, seed: 1 });
  const ends = tiles(layout).flatMap(({ placed: [shown] }) => {
    if (!shown?.window) return [];
    const ys = flatten(piece.cutLine, 0.1).map((p) => moved(shown.move)(p).y);
    const { y, height } = shown.window;
    return [{ above: Math.min(...ys) - y, below: y + height - Math.max(...ys) }];
  });
  const above = Math.max(...ends.map((end) => end.above));
  const spare = above + Math.max(...ends.map((end) => end.below));
  expect(spare).toBeGreaterThan(0);
  expect((above / spare) * 4).toBeCloseTo(Math.round((above / spare) * 4), 6);
});
