import type { Mm } from '../../body';
import type { Ref, Seam } from '../draft-types';
import { distance, lerp, type Path, type Point, pathLength, pointAtLength, polyline } from '../geometry';
import { type Arranged, arrange } from './arrange';
import type { Part, Scene } from './guide-types';
import { insideOf } from './inside';
import type { Known } from './known';
import { foldsOf, type LaidPart, pathOf, placed, runOf, ticksOf } from './laid-part';
import { type Mark, marksAlong } from './marks';
import type { Corner } from './snips';

/** Curves held by stitches before the first seam stand as a seam of this name. */
export const STAY = 'stay';

/**
 * The picture of a step: its pieces from the draft's own outlines, what is sewn now, what has been sewn before it, and the
 * places that meet. `done` are the seams of the steps before. With `snips` it shows these alone, before the seams are sewn.
 */
export function sceneOf(
  seams: readonly Seam[],
  done: readonly Seam[],
  known: Known,
  snips: readonly Corner[] = [],
): Scene {
  const arranged = arrange(seams, known);
  const refs = seams.flatMap(({ first, second }) => [...first, ...second]);
  const turned = snips.length === 0 && seams.every(({ name, join }) => join === 'folded' && name !== STAY);
  const parts = arranged.parts.map((part) => ({
    ...partOf(part, refs, done, arranged),
    ...(snips.length > 0 ? cutInto(part, snips) : {}),
    folds: turned ? foldsOf(part, refsTo(refs, part), arranged.onOther.has(part.piece.name)) : [],
  }));
  const all = seams.flatMap((seam) => pairsOf(seam, arranged));
  const least = Math.max(arranged.width * LEAST_APART.across, arranged.height * LEAST_APART.up);
  const pairs = roomy(all, least);
  return {
    width: arranged.width,
    height: arranged.height,
    parts,
    // Two edges of a strip lie too near for a number each.
    meets: pairs.flatMap(({ one, two }, index) =>
      (distance(one, two) < least ? [lerp(one, two, 0.5)] : [one, two]).map((at) => ({ number: index + 1, at })),
    ),
    ties: anyCross(pairs) ? [] : pairs.map(({ one, two }) => polyline([one, two])),
    threads: threadsOf(done, arranged),
  };
}

/** Numbers nearer than this share of the picture's width, or height, lie on each other: on paper a picture is wider than high. */
const LEAST_APART = { across: 0.056, up: 0.082 } as const;

/** Pairs whose numbers can be read, the ends of seams before what lies between: of those too near one kept, none. */
function roomy(pairs: readonly Pair[], least: number): readonly Pair[] {
  const kept = new Set<Pair>();
  for (const pair of [...pairs.filter(({ isEnd }) => isEnd), ...pairs.filter(({ isEnd }) => !isEnd)]) {
    const taken = [...kept].flatMap(({ one, two }) => [one, two]);
    const near = (p: Point) => taken.some((other) => distance(p, other) < least);
    if (!near(pair.one) && !near(pair.two)) kept.add(pair);
  }
  return pairs.filter((pair) => kept.has(pair));
}

/** Whether lines between places that meet would run across each other, and tell less than the numbers alone. */
function anyCross(pairs: readonly Pair[]): boolean {
  return pairs.some((a, index) => pairs.slice(index + 1).some((b) => isCrossed(a, b)));
}

function isCrossed(a: Pair, b: Pair): boolean {
  const side = (p: Point, { one, two }: Pair) =>
    Math.sign((two.x - one.x) * (p.y - one.y) - (two.y - one.y) * (p.x - one.x));
  return side(b.one, a) * side(b.two, a) < 0 && side(a.one, b) * side(a.two, b) < 0;
}

const refsTo = (refs: readonly Ref[], { piece }: LaidPart): readonly string[] => [
  ...new Set(refs.filter((ref) => ref.piece === piece.name).map(({ edge }) => edge)),
];

function partOf(
  part: LaidPart,
  refs: readonly Ref[],
  done: readonly Seam[],
  { onOther }: Arranged,
): Omit<Part, 'folds'> {
  const { piece } = part;
  const now = refsTo(refs, part);
  const before = refsTo(
    done.flatMap(({ first, second }) => [...first, ...second]),
    part,
  ).filter((name) => !now.includes(name));
  const there = onOther.has(piece.name);
  const both = (names: readonly string[], other: boolean) =>
    names.map((name) => placed(part, pathOf(piece, name), other)).filter((path) => path.length > 0);
  const [box, { move }] = [part.box, part];
  return {
    piece: piece.name,
    layers: 1,
    outline: placed({ ...part, flipped: false }, part.outline),
    middle: piece.onFold
      ? polyline([
          { x: move.x, y: box.top + move.y },
          { x: move.x, y: box.bottom + move.y },
        ])
      : [],
    now: both(now, there),
    also: piece.onFold ? both(now, !there) : [],
    sewn: [...both(before, false), ...(piece.onFold ? both(before, true) : [])],
    sewnEdges: before,
    lines: [...piece.lines.map(({ path }) => placed(part, path)), ...piece.cuts.map((cut) => placed(part, cut))],
    ticks: ticksOf(part, now),
    inside: insideOf(part),
  };
}

/** The cuts into this piece's corners, on both halves of one that lies unfolded. */
function cutInto(part: LaidPart, snips: readonly Corner[]): Pick<Part, 'now' | 'also' | 'ticks'> {
  const own = snips.filter(({ piece }) => piece === part.piece.name);
  const both = (other: boolean) => own.map(({ snip }) => placed(part, snip, other));
  return { now: both(false), also: part.piece.onFold ? both(true) : [], ticks: [] };
}

type Pair = { readonly one: Point; readonly two: Point; readonly isEnd: boolean };

/** The places of a seam that meet: its ends, its notches and where it passes from one piece to the next. */
function pairsOf(seam: Seam, { parts, onOther }: Arranged): readonly Pair[] {
  if (seam.join === 'folded' || seam.second.length === 0) return [];
  const partsOf = (name: string) => parts.filter(({ piece }) => piece.name === name);
  const self = seam.first.length === 1 && seam.first[0]?.piece === seam.second[0]?.piece;
  const same = self && seam.first[0]?.edge === seam.second[0]?.edge;
  const along = (refs: readonly Ref[], second: boolean, until?: Mm): readonly Mark[] =>
    marksAlong(
      refs.flatMap((ref) => {
        const found = partsOf(ref.piece);
        const part = second ? found.at(-1) : found[0];
        if (!part) return [];
        const other = onOther.has(ref.piece) || (same && second && part.piece.onFold);
        return [{ run: runOf(part, ref, other), ref, notches: part.piece.notches }];
      }),
      until,
    );
  // A facing laid along a longer edge ends on it, before that ends.
  const laid = seam.join === 'laid' ? seam.secondLength : undefined;
  const [one, two] = [along(seam.first, false, laid), along(seam.second, true)];
  const [from, to] = one.length === two.length ? [one, two] : [ends(one), ends(two)];
  return from.flatMap((mark, index) => {
    const other = to[index];
    const isEnd = index === 0 || index === from.length - 1;
    return other && apart(mark.at, other.at) ? [{ one: mark.at, two: other.at, isEnd }] : [];
  });
}

const ends = (marks: readonly Mark[]): readonly Mark[] => [marks[0], marks.at(-1)].flatMap((mark) => mark ?? []);

/** Places on the two halves of a fold are one place. */
const apart = (a: Point, b: Point) => distance(a, b) > 1;

/** Threads between the nearest halves of edges that were joined before. */
function threadsOf(done: readonly Seam[], { parts }: Arranged): Scene['threads'] {
  return done.flatMap(({ name, join, first, second }) => {
    if (join === 'folded' || join === 'laid') return [];
    const middles = (refs: readonly Ref[]) =>
      parts.flatMap((part) =>
        refs
          .filter((ref) => ref.piece === part.piece.name)
          .flatMap((ref) =>
            (part.piece.onFold ? [false, true] : [false]).map((other) => middleOf(runOf(part, ref, other))),
          ),
      );
    const links = middles(first).flatMap((from) => middles(second).map((to) => ({ from, to })));
    const nearest = links.filter(({ from, to }) => apart(from, to)).sort((a, b) => far(a) - far(b))[0];
    return nearest ? [{ seam: name, path: polyline([nearest.from, nearest.to]) }] : [];
  });
}

const far = ({ from, to }: { readonly from: Point; readonly to: Point }) => distance(from, to);

function middleOf(path: Path): Point {
  return path.length === 0 ? { x: 0, y: 0 } : pointAtLength(path, pathLength(path) / 2).point;
}
