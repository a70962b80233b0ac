// The pencil plan: each piece as points to mark with a ruler on paper, and the lines to join them by.

import { MM_PER_INCH, type Mm, type Unit } from '../../body';
import type { Draft, Edge, Piece, Role } from '../draft-types';
import { line, type Path, type Point, pathBounds } from '../geometry';
import { cornersIn, type Run, runsOf } from './runs';
import { marksOn } from './snapped';

/** A point's number, and how far it lies from the left and from the bottom edge of the paper: whole steps of a ruler. */
export type Mark = { readonly number: number; readonly x: Mm; readonly y: Mm };

/** Joined by a ruler, or by a smooth curve through all of the numbers. */
export type Join = { readonly kind: Run['kind']; readonly through: readonly number[] };

/** `at` along the line from the point it starts at. */
export type NotchMark = { readonly from: number; readonly at: Mm; readonly ticks: 1 | 2 };

/** One named line: an edge with its role, what is drawn inside, or the lengthwise thread. `length` is what it must measure. */
export type PencilLine = {
  readonly name: string;
  readonly role: Role | 'inside' | 'cut' | 'grain';
  readonly joins: readonly Join[];
  readonly length: Mm;
  readonly allowance: Mm;
  readonly notches: readonly NotchMark[];
};

/** `piece` is its place in the draft; width and height of the least paper, its left edge folded where the piece lies on the fold. */
export type PencilPiece = {
  readonly piece: number;
  readonly width: Mm;
  readonly height: Mm;
  readonly marks: readonly Mark[];
  readonly lines: readonly PencilLine[];
};

/** What a ruler tells: sixteenths of an inch, or millimetres. */
export const stepOf = (unit: Unit): Mm => (unit === 'in' ? MM_PER_INCH / 16 : 1);

/** Paper left free beyond the cut line, mm. */
const MARGIN_MM = 6;
/** A piece may lie this many parts of a step further in, where its corners then meet the ruler better. */
const PLACES = 8;

/** Every piece's stitching line (seam allowances are added round it), within half a step and half a millimetre. */
export function pencilPlan(draft: Draft, unit: Unit): readonly PencilPiece[] {
  return draft.pieces.map((piece, index) => pencilPiece(piece, index, stepOf(unit)));
}

function pencilPiece(piece: Piece, index: number, step: Mm): PencilPiece {
  const box = pathBounds([...piece.cutLine, ...piece.seamLine]);
  const corners = piece.edges.flatMap(({ path }) => cornersIn(path));
  const left = piece.onFold
    ? 0
    : best(
        corners.map((p) => p.x - box.left + MARGIN_MM),
        step,
      ) +
      MARGIN_MM -
      box.left;
  const bottom =
    best(
      corners.map((p) => box.bottom - p.y + MARGIN_MM),
      step,
    ) +
    MARGIN_MM +
    box.bottom;
  const onPaper = (p: Point): Point => ({ x: p.x + left, y: bottom - p.y });
  const { marks, joined } = numbering(onPaper, step);
  const upTo = (mm: Mm): Mm => Math.ceil((mm + MARGIN_MM) / step) * step;
  const lines = [
    ...piece.edges.map((edge) => edgeLine(edge, piece, joined)),
    ...piece.lines.map(({ name, path, length }) =>
      inside(name, piece.cuts.includes(path) ? 'cut' : 'inside', length, joined(path)),
    ),
    inside('grain', 'grain', 0, joined([line(...piece.grain)])),
  ];
  return { piece: index, width: upTo(box.right + left), height: upTo(bottom - box.top), marks, lines };
}

const inside = (name: string, role: 'inside' | 'cut' | 'grain', length: Mm, joins: readonly Join[]): PencilLine => ({
  ...{ name, role, joins, length },
  ...{ allowance: 0, notches: [] },
});

function edgeLine(
  { name, role, length, allowance, path }: Edge,
  piece: Piece,
  joined: (path: Path) => readonly Join[],
): PencilLine {
  const joins = joined(path);
  const [from = 0] = joins[0]?.through ?? [];
  const notches = piece.notches.filter(({ edge }) => edge === name).map(({ at, ticks }) => ({ from, at, ticks }));
  return { name, role, joins, length, allowance, notches };
}

/** Numbers points as they come, each place of the ruler once, and draws paths through them. */
function numbering(onPaper: (p: Point) => Point, step: Mm) {
  const marks: Mark[] = [];
  const known = new Map<string, number>();
  const numberAt = (p: Point): number => {
    const { x, y } = onPaper(p);
    const [across, up] = [Math.round(x / step), Math.round(y / step)];
    const key = `${across} ${up}`;
    const number = known.get(key) ?? marks.length + 1;
    if (!known.has(key)) marks.push({ number, x: across * step, y: up * step });
    known.set(key, number);
    return number;
  };
  const joined = (path: Path): readonly Join[] =>
    runsOf(path).flatMap((run) =>
      marksOn(run, onPaper, step).flatMap((points): readonly Join[] => {
        const through = points.map(numberAt).filter((number, at, all) => number !== all[at - 1]);
        return through.length > 1 ? [{ kind: run.kind, through }] : [];
      }),
    );
  return { marks, joined };
}

/** How much further in all places meet whole steps best, by the sum of squares. */
function best(places: readonly Mm[], step: Mm): Mm {
  const missed = (shift: Mm): number =>
    places.reduce((sum, place) => sum + ((place + shift) / step - Math.round((place + shift) / step)) ** 2, 0);
  const shifts = Array.from({ length: PLACES }, (_, part) => (part * step) / PLACES);
  return shifts.reduce((found, shift) => (missed(shift) < missed(found) ? shift : found));
}
