import type { Draft, Edge, Notch, Piece, Role } from '../../app/drafting/draft-types';
import {
  type Curve,
  cubic,
  cutLine,
  line,
  type Path,
  type Point,
  pathLength,
  point,
  polyline,
} from '../../app/drafting/geometry';

/** Drafts made by hand, to lay out and print: shapes like those of a small hooded top, but measured from nothing. */
export function handMade(size: number, more: Partial<Draft> = {}): Draft {
  return {
    engine: '0.1.0',
    order: {
      garment: 'hooded-top',
      choices: {},
      fit: 'easy',
      cloth: 'quilting-cotton',
      allowances: {},
      paper: 'a4',
      date: '2026-11-20',
    },
    toy: 'Bramble',
    pieces: [front(size), back(size), sleeve(size), hood(size), strip(size), facing(size)],
    seams: [],
    fit: [],
    openings: [],
    adjustments: [],
    flags: [],
    sewing: [],
    notions: [],
    ...more,
  };
}

/** A square or oblong piece with no allowance: what is printed is exactly what is asked. */
export function oblong(name: string, width: number, height: number): Piece {
  const corners = [point(0, 0), point(width, 0), point(width, height), point(0, height)];
  const sides = ['top', 'right', 'bottom', 'left'] as const;
  return pieceOf(
    name,
    sides.map((side, i) => [side, 'edge', [line(at(corners, i), at(corners, i + 1))]] as const),
    { allowances: { edge: 0 }, grain: [point(width / 3, height * 0.2), point(width / 3, height * 0.8)] },
  );
}

type Sides = readonly (readonly [name: string, role: Role, path: Path])[];
type More = {
  readonly copies?: number;
  readonly mirrored?: boolean;
  readonly onFold?: boolean;
  readonly allowances?: Partial<Record<Role, number>>;
  readonly grain: readonly [Point, Point];
  readonly notches?: readonly Notch[];
  readonly lines?: Readonly<Record<string, Path>>;
  readonly cuts?: readonly Path[];
};

const usual: Partial<Record<Role, number>> = { seam: 6.35, hem: 12.7, neckline: 6.35, opening: 6.35 };

function pieceOf(name: string, sides: Sides, more: More): Piece {
  const allowances = { ...usual, ...more.allowances };
  const edges = sides.map(
    ([edge, role, path]): Edge => ({
      name: edge,
      role,
      path,
      length: pathLength(path),
      allowance: role === 'fold' ? 0 : (allowances[role] ?? 0),
    }),
  );
  const cut = cutLine(
    edges.map(({ path, role, allowance }) => ({ path, allowance, turned: role === 'hem', fold: role === 'fold' })),
  );
  return {
    name,
    copies: more.copies ?? 1,
    mirrored: more.mirrored ?? false,
    onFold: more.onFold ?? false,
    edges,
    lines: Object.entries(more.lines ?? {}).map(([inner, path]) => ({ name: inner, path, length: pathLength(path) })),
    seamLine: edges.flatMap((edge) => edge.path),
    cutLine: cut.path,
    grain: more.grain,
    notches: more.notches ?? [],
    cuts: more.cuts ?? [],
  };
}

function front(k: number): Piece {
  return bodice('front', k, 36, 1);
}

function back(k: number): Piece {
  return bodice('back', k, 14, 2);
}

function bodice(name: string, k: number, drop: number, ticks: 1 | 2): Piece {
  const p = (x: number, y: number): Point => point(x * k, y * k);
  const neck: Curve = cubic(p(0, drop), p(20, drop), p(36, drop * 0.6), p(38, 0));
  const arm: Curve = cubic(p(68, 10), p(64, 40), p(68, 78), p(100, 84));
  return pieceOf(
    name,
    [
      ['neck', 'neckline', [neck]],
      ['shoulder', 'seam', [line(p(38, 0), p(68, 10))]],
      ['armhole', 'seam', [arm]],
      ['side', 'seam', [line(p(100, 84), p(104, 150))]],
      ['hem', 'hem', [cubic(p(104, 150), p(70, 153), p(35, 153), p(0, 153))]],
      ['fold', 'fold', [line(p(0, 153), p(0, drop))]],
    ],
    {
      onFold: true,
      grain: [p(20, 70), p(20, 130)],
      notches: [
        { edge: 'armhole', at: 50 * k, ticks },
        { edge: 'side', at: 30 * k, ticks },
      ],
    },
  );
}

function sleeve(k: number): Piece {
  const p = (x: number, y: number): Point => point(x * k, y * k);
  return pieceOf(
    'sleeve',
    [
      ['back-cap', 'seam', [cubic(p(-90, 40), p(-55, 36), p(-40, 0), p(0, 0))]],
      ['front-cap', 'seam', [cubic(p(0, 0), p(40, 0), p(55, 36), p(90, 40))]],
      ['front-underarm', 'seam', [line(p(90, 40), p(76, 138))]],
      ['cuff', 'hem', [cubic(p(76, 138), p(40, 142), p(-40, 142), p(-76, 138))]],
      ['back-underarm', 'seam', [line(p(-76, 138), p(-90, 40))]],
    ],
    {
      copies: 2,
      mirrored: true,
      grain: [p(-20, 30), p(-20, 120)],
      notches: [
        { edge: 'front-cap', at: 55 * k, ticks: 1 },
        { edge: 'back-cap', at: 50 * k, ticks: 2 },
      ],
      lines: { 'over-arm': polyline([p(-90, 40), p(90, 40)]) },
    },
  );
}

function hood(k: number): Piece {
  const p = (x: number, y: number): Point => point(x * k, y * k);
  return pieceOf(
    'hood',
    [
      ['crown', 'seam', [cubic(p(0, 190), p(-30, 60), p(20, 0), p(120, 0))]],
      ['top', 'seam', [line(p(120, 0), p(170, 4))]],
      ['face', 'hem', [line(p(170, 4), p(170, 200))]],
      ['neck', 'seam', [cubic(p(170, 200), p(110, 225), p(60, 190), p(0, 190))]],
    ],
    {
      copies: 2,
      mirrored: true,
      grain: [p(120, 60), p(120, 160)],
      notches: [{ edge: 'crown', at: 120 * k, ticks: 2 }],
    },
  );
}

function strip(k: number): Piece {
  const p = (x: number, y: number): Point => point(x * k, y * k);
  return pieceOf(
    'strip',
    [
      ['face', 'hem', [line(p(0, 0), p(24, 0))]],
      ['side', 'seam', [cubic(p(24, 0), p(24, 90), p(20, 200), p(14, 250))]],
      ['nape', 'neckline', [line(p(14, 250), p(0, 250))]],
      ['fold', 'fold', [line(p(0, 250), p(0, 0))]],
    ],
    { onFold: true, grain: [p(10, 60), p(10, 190)], notches: [{ edge: 'side', at: 120 * k, ticks: 1 }] },
  );
}

function facing(k: number): Piece {
  const p = (x: number, y: number): Point => point(x * k, y * k);
  return pieceOf(
    'slit-facing',
    [
      ['top', 'neckline', [line(p(0, 0), p(15, 0))]],
      ['side', 'seam', [line(p(15, 0), p(15, 55))]],
      ['bottom', 'seam', [line(p(15, 55), p(0, 55))]],
      ['fold', 'fold', [line(p(0, 55), p(0, 0))]],
    ],
    {
      onFold: true,
      grain: [p(7, 10), p(7, 45)],
      lines: { slit: [line(p(0, 0), p(0, 45))] },
      cuts: [[line(p(0, 0), p(0, 45))]],
    },
  );
}

function at(points: readonly Point[], index: number): Point {
  return points[index % points.length] ?? point(0, 0);
}
