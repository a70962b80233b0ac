import type { Mm } from '../../body';
import type { Edge, InnerLine, Notch, Piece, Role } from '../draft-types';
import type { DrawnPiece } from '../drawing/draw';
import { cutLine, distance, flatten, lerp, type Path, type Point, pathLength, point, polyline } from '../geometry';
import type { Look } from '../rows/names';
import type { AnyNames } from '../rows/rows';
import { BINDS_UP_TO_MM } from '../sizes/cloths';
import { edgeAllowance } from './edge-allowance';

/** Roles whose allowance is turned back over the edge itself. */
const turnedRoles: readonly Role[] = ['hem', 'casing', 'closure'];
const GRAIN_SHARE = 0.6;
/** On the bias it reaches this share of the room to either side, and as far up and down. */
const BIAS_SHARE = 0.35;
const GRAIN_FLAT_MM = 0.5;
const GRAIN_CLEAR_MM = 4;

/** What a draft's pieces are made with: `bound` are the edges, as `piece.edge`, that a strip folds over, cut on the line. */
export type Making = {
  readonly allowances: Readonly<Record<Role, Mm>>;
  readonly bound: ReadonlySet<string>;
  readonly hems: ReadonlyMap<string, Mm>;
};

/** A piece from what was drawn: roles, allowances, the cut line, grain, and the notches its seams gave it. */
export function pieceOf(
  drawn: DrawnPiece,
  { choices, sizes, wearer }: Pick<Look<AnyNames>, 'choices' | 'sizes' | 'wearer'>,
  { allowances, bound, hems }: Making,
  notches: readonly Notch[],
): Piece {
  const { row, shape } = drawn;
  const roles = row.roles(choices);
  const edges = drawnOf(shape.edges).map(([name, path]): Edge => {
    const key = `${row.name}.${name}`;
    const isBound = bound.has(key);
    const role = isBound ? 'edge' : (roles[name] ?? 'seam');
    const own = () => hems.get(key) ?? edgeAllowance(role, path, allowances, row.narrowHem);
    const allowance = isBound ? 0 : own();
    return { name, role, length: pathLength(path), allowance, path };
  });
  const lines = drawnOf(shape.lines).map(([name, path]): InnerLine => ({ name, length: pathLength(path), path }));
  const seamLine = edges.flatMap((edge) => edge.path);
  return {
    name: row.name,
    copies: typeof row.copies === 'function' ? row.copies(sizes) : row.copies,
    mirrored: row.mirrored,
    onFold: row.onFold,
    ...(row.bias && wearer.cloth.thickness > BINDS_UP_TO_MM ? { of: 'thin-cotton' as const } : {}),
    edges,
    lines,
    seamLine,
    cutLine: onFold(
      row.onFold,
      cutLine(
        edges.map(({ path, allowance, role }) => ({
          path,
          allowance,
          turned: turnedRoles.includes(role),
          fold: role === 'fold',
        })),
      ).path,
    ),
    grain: grainOf(
      seamLine,
      lines.map((each) => each.path),
      row.bias?.(wearer.cloth) === true,
    ),
    notches,
    cuts: lines.filter((line) => row.cuts?.includes(line.name)).map((line) => line.path),
  };
}

/** What a block drew, in its order. */
function drawnOf(paths: { readonly [name: string]: Path | undefined }): readonly (readonly [string, Path])[] {
  return Object.entries(paths).flatMap(([name, path]) => (path ? [[name, path] as const] : []));
}

/** Rounding of a cut line's union: what lies beyond the fold by no more than this lies on it. */
const ROUNDED_MM = 0.001;

/** Nothing is cut beyond the fold, however far a tight corner's allowance would reach: the ring is clipped at x = 0, without steps that are only rounding. */
function onFold(folded: boolean, path: Path): Path {
  if (!folded || path.every(({ from }) => from.x >= 0)) return path;
  const ring = path.flatMap(({ from, to }) => {
    const kept = from.x > -ROUNDED_MM ? [point(Math.max(from.x, 0), from.y)] : [];
    const crosses = from.x < -ROUNDED_MM !== to.x < -ROUNDED_MM;
    return crosses
      ? [...kept, lerp(from, to, from.x / (from.x - to.x))].map((p) => point(Math.max(p.x, 0), p.y))
      : kept;
  });
  const apart = ring.filter((p, at) => distance(p, ring[at === 0 ? ring.length - 1 : at - 1] ?? p) > ROUNDED_MM);
  return polyline([...apart, ...apart.slice(0, 1)]);
}

/** The lengthwise thread: upright, where the piece is longest, a little inside it and clear of upright lines; aslant on the bias. */
function grainOf(ring: Path, lines: readonly Path[], bias: boolean): [Point, Point] {
  const outline = flatten(ring, GRAIN_FLAT_MM);
  const xs = outline.map((each) => each.x);
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const uprights = [ring, ...lines].flatMap((path) =>
    path.flatMap(({ from, to }) => (from.x === to.x ? [from.x] : [])),
  );
  const places = [0.5, 0.4, 0.6, 0.3, 0.7, 0.45, 0.55].map((share) => low + (high - low) * share);
  const clear = places.filter((x) => uprights.every((each) => Math.abs(each - x) > GRAIN_CLEAR_MM));
  const chords = (clear.length > 0 ? clear : places).map((x) => roomyChord(outline, x));
  const best = chords.reduce((longest, each) => (each.length > longest.length * 1.15 ? each : longest));
  const margin = (best.length * (1 - GRAIN_SHARE)) / 2;
  if (!bias) return [point(best.x, best.top + margin), point(best.x, best.top + best.length - margin)];
  const [middle, half] = [best.top + best.length / 2, Math.min(best.length, best.x - low, high - best.x) * BIAS_SHARE];
  return [point(best.x - half, middle - half), point(best.x + half, middle + half)];
}

/** An outline is flattened: a thread so near beside an edge may lie outside it, mm. */
const BESIDE_MM = 1;

/** As much of the chord at x as runs inside the outline a little to either side too; all of it where nothing does. */
function roomyChord(outline: readonly Point[], x: number): Chord {
  const chords = [x - BESIDE_MM, x, x + BESIDE_MM].map((each) => chordAt(outline, each));
  const top = Math.max(...chords.map((each) => each.top));
  const low = Math.min(...chords.map((each) => each.top + each.length));
  return low > top ? { x, top, length: low - top } : chordAt(outline, x);
}

type Chord = { readonly x: number; readonly top: number; readonly length: number };

/** The longest upright chord inside a closed outline at x. */
function chordAt(outline: readonly Point[], x: number): Chord {
  const crossings = outline
    .flatMap((from, index) => {
      const to = outline[(index + 1) % outline.length] ?? from;
      return from.x < x === to.x < x ? [] : [from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x)];
    })
    .sort((a, b) => a - b);
  let best: Chord = { x, top: 0, length: 0 };
  for (let index = 0; index + 1 < crossings.length; index += 2) {
    const top = crossings[index] ?? 0;
    const length = (crossings[index + 1] ?? top) - top;
    if (length > best.length) best = { x, top, length };
  }
  return best;
}
