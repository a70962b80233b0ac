import type { Mm } from '../../body';
import { arc, brent, ellipseQuarter, hermite, line, type Path, type Point, pathLength, point } from '../geometry';

/** Both seams of a barrel are as long as each other within this, mm: far less than a pencil line. */
const SOLVED_MM = 1e-5;
/** No neck edge or hem turns farther than this from its fold to its corner, radians (70°; common practice, no source). */
const MOST_TURN = 1.22;
/** At its corner no neck edge leans farther than this, radians (50°): it turns sooner, or the corner would be a hook (common practice, no source). */
const MOST_NECK_LEAN = 0.87;
/** A seam goes at most so much sideways for each mm along: steeper it would be a shelf (common practice, no source). */
const STEEPEST = 1.1;
/** Arcs that turn less, radians, are drawn straight: their radii would be many metres. */
const STRAIGHT = 1e-6;
/** Leans of both seams at the corner that are tried in turn, radians: the less, the smoother the belly's edge. */
const LEANS: readonly number[] = [0, 0.1, 0.2, 0.3, 0.4, 0.5];

/** What the neck end of a barrel is solved from, mm: halves beside the folds of back and belly. */
export type NeckAsked = {
  /** Half widths of back and belly at the legs, and of the belly at the neck. */
  readonly backHalf: Mm;
  readonly bellyHalf: Mm;
  readonly bellyNeck: Mm;
  /** From the nape, and from the front of the neck, to the level of the legs. */
  readonly backLong: Mm;
  readonly bellyLong: Mm;
  /** Half the finished neck. */
  readonly neck: Mm;
};

/**
 * How far the neck edges turn from fold to corner, as arcs so deep would, how far each leans there, and how far both seams lean
 * where they leave it, radians; the back's half width there.
 */
export type NeckEnd = {
  readonly backTurn: number;
  readonly bellyTurn: number;
  readonly backEnds: number;
  readonly bellyEnds: number;
  readonly lean: number;
  readonly backNeck: Mm;
};

/**
 * The neck corner of a barrel: a tube whose end is cut aslant. Both neck edges are square to their folds, and arcs of circles but
 * for the steepest, which turn sooner; both seams reach the leg along the fold and leave the corner with the same lean, so that with
 * the belly's edge leaning by two leans more than the back's the angles at the corner add to 180° and the edge runs on across the
 * seam. Solved: the turn at which the two seams are equally long, while the edges add up to the neck; with the least lean that
 * allows it. Null where nothing within the limits does that.
 */
export function neckEnd(asked: NeckAsked): NeckEnd | null {
  for (const lean of LEANS) {
    const off = (turn: number): number => {
      const { back, belly } = cornersAt(asked, turn, lean);
      return pathLength(back) - pathLength(belly);
    };
    const solved = brent(off, -MOST_TURN, MOST_TURN - 2 * lean, { tolerance: SOLVED_MM });
    const found = solved.ok ? cornersAt(asked, solved.x, lean) : null;
    if (found && found.end.backNeck > 0 && [found.back, found.belly].every(isSewable)) return found.end;
  }
  return null;
}

/** With the back's edge turning so far: the end, and both seams from its corner to the leg. */
function cornersAt({ bellyNeck, neck, ...legs }: NeckAsked, backTurn: number, lean: number) {
  const bellyTurn = backTurn + 2 * lean;
  const backEnds = Math.min(Math.max(backTurn, -MOST_NECK_LEAN), MOST_NECK_LEAN - 2 * lean);
  const bellyEnds = backEnds + 2 * lean;
  const bellyLong = bellyNeck * longPerHalf(bellyTurn, bellyEnds);
  const backNeck = (neck - bellyLong) / longPerHalf(backTurn, backEnds);
  const corner = point(backNeck, backNeck * Math.tan(backTurn / 2));
  const end: NeckEnd = { backTurn, bellyTurn, backEnds, bellyEnds, lean, backNeck };
  const below = point(bellyNeck, -bellyNeck * Math.tan(bellyTurn / 2));
  const back: Path = [intoFold(corner, point(legs.backHalf, legs.backLong), lean)];
  const belly: Path = [intoFold(below, point(legs.bellyHalf, legs.bellyLong), lean)];
  return { end, back, belly };
}

/** A seam that leaves with a lean, radians off the fold's direction, and arrives along the fold. */
export function intoFold(from: Point, to: Point, lean: number) {
  return hermite(from, point(Math.sin(lean), Math.cos(lean)), to, point(0, 1), 1 / 3, 1 / 3);
}

function isSewable(seam: Path): boolean {
  const [only] = seam;
  if (!only) return false;
  const { from, to } = only;
  return to.y > from.y && Math.abs(to.x - from.x) <= STEEPEST * (to.y - from.y);
}

/** How long an edge is for each mm from its fold to its corner: an arc by its turn (geometry), any other as it is drawn. */
function longPerHalf(turn: number, ends: number): number {
  return turn === ends ? 1 / sinc(turn) : pathLength(edgeCurve(0, 1, turn, ends));
}

/** The arc itself, from the fold at a height to so far from it. */
export function foldArc(height: Mm, half: Mm, turn: number): Path {
  if (Math.abs(turn) < STRAIGHT) return [line(point(0, height), point(half, height))];
  const down = Math.sign(turn);
  const radius = half / Math.sin(Math.abs(turn));
  const top = (-down * Math.PI) / 2;
  return arc(point(0, height + down * radius), radius, top, top + turn);
}

/** No hem leaves its side farther from square than this, radians (20°): past it a corner would be a spike (common practice, no source). */
const MOST_HEM_LEAN = 0.35;

/** A neck edge, from the fold to a corner as far down as an arc that turns so far; it leans so there, radians. */
export function edgeCurve(height: Mm, half: Mm, turn: number, ends: number): Path {
  if (turn === ends) return foldArc(height, half, turn);
  const corner = point(half, height + half * Math.tan(turn / 2));
  return [hermite(point(0, height), point(1, 0), corner, point(Math.cos(ends), Math.sin(ends)), 1 / 3, 1 / 3)];
}

/** The hem: nearly square to the side. */
export function hemCurve(height: Mm, half: Mm, turn: number): Path {
  return edgeCurve(height, half, turn, Math.sign(turn) * Math.min(Math.abs(turn), MOST_HEM_LEAN));
}

/** One side of a leg's hole, from before the leg to behind it: half an oval, square to the seam, so deep and so high to its middle. */
export function legEdge(fore: Point, deep: Mm, high: Mm): Path {
  const inside = point(fore.x - deep, fore.y + high);
  const hind = point(fore.x, fore.y + 2 * high);
  return [
    ellipseQuarter(fore, point(-1, 0), inside, point(0, 1)),
    ellipseQuarter(inside, point(0, 1), hind, point(1, 0)),
  ];
}

/** Half the height of a hole so long round, mm, when one side is so much deeper than half as wide as the other is shallower. */
export function holeHigh(radius: Mm, off: Mm): Mm {
  const round = (high: Mm) =>
    [off, -off].reduce((sum, each) => sum + pathLength(legEdge(point(0, 0), radius + each, high)), 0);
  const solved = brent((high) => round(high) - 2 * Math.PI * radius, radius / 2, 1.01 * radius, {
    tolerance: SOLVED_MM,
  });
  return solved.ok ? solved.x : radius;
}

/** Half the chord of a unit arc beside its length: 1 for none. */
const sinc = (angle: number): number => (Math.abs(angle) < STRAIGHT ? 1 - angle ** 2 / 6 : Math.sin(angle) / angle);
