import {
  brent,
  hermite,
  line,
  mirrorPath,
  type Path,
  type Point,
  pathLength,
  point,
  reversePath,
  splitPath,
} from '../geometry';
import { block, type Fed } from './block';
import { lowerSleeve } from './sleeve';

/** Its slanting edges turn near their ends and run straight between: hollow there, they would draw the chest together (sewn up on simulated toys). */
const UNDERARM_HANDLE = 0.25;
const NECK_HANDLE = 0.13;
const SOLVED_MM = 1e-4;
/** The neck edge stays narrower than the sleeve, dart and all, as a share of half its width, and lies at most so far off its middle. */
const WIDEST_TOP = 1.4;
const FARTHEST_OFF = 0.8;
/** A head rises at least this share of how far it reaches inwards; an edge too short for that is gathered to. */
const LOWEST_RISE = 0.25;
/** A narrower dart is not sewn: so little is eased in (common practice, no source). */
const NARROWEST_DART_MM = 2;
const EDGES = ['frontRaglan', 'backRaglan', 'neckBefore', 'neckBehind'] as const;
const DART = ['dartLong', 'dartTurn'] as const;

/**
 * A raglan sleeve, laid flat: x right from the middle of the bicep line, front at the left; y down from that line, so the
 * sleeve's head has y < 0. Its two slanting edges are drawn as long as the body's, square to the neck edge and to the
 * underarm seams; how high they rise follows, and how far the neck edge lies to the front. Sizes in mm: `frontRaglan`,
 * `backRaglan` (the body's edges), `neckBefore` and `neckBehind` (the sleeve's share of the neckline before and behind the
 * shoulder), `bicep`, `cuff`, `underarmLength`. A dart runs `dartLong` mm from the neck edge down to the point of the shoulder,
 * where its two edges, each square to the neck's, part by twice `dartTurn` radians.
 */
export const raglanSleeve = block({
  sizes: ['bicep', 'cuff', 'underarmLength', ...EDGES],
  optional: DART,
  edges: [
    'front-raglan',
    'neck-front',
    'dart-front',
    'dart-back',
    'neck-back',
    'back-raglan',
    'back-underarm',
    'cuff',
    'front-underarm',
  ],
  lines: ['over-arm'],
  draw: (s) => {
    const tube = lowerSleeve({ ...s, capHeight: 0, sleeveLength: s.underarmLength });
    const { tip, ...head } = headOf(s, tube.backUnderarm.x, point(tube.taper.y, tube.taper.x));
    return { edges: { ...head, ...tube.edges }, lines: { 'over-arm': [line(tip, point(tip.x, 0))] } };
  },
});

type Raglan = Fed<(typeof EDGES)[number], (typeof DART)[number]>;
type Head = {
  readonly 'front-raglan': Path;
  readonly 'neck-front': Path;
  readonly 'dart-front'?: Path;
  readonly 'dart-back'?: Path;
  readonly 'neck-back': Path;
  readonly 'back-raglan': Path;
  /** The point of the shoulder; without a dart, where it meets the neck. */
  readonly tip: Point;
};

/** With its dart, as far as there is room for that. */
function headOf(s: Raglan, half: number, leave: Point): Head {
  const narrow = Math.min(1, (half * WIDEST_TOP) / (s.neckBefore + s.neckBehind));
  const [before, behind] = [s.neckBefore * narrow, s.neckBehind * narrow];
  const dart = { long: s.dartLong ?? 0, turn: s.dartTurn ?? 0 };
  const widest = (half * WIDEST_TOP - before - behind) / 2 / Math.max(dart.long, 1);
  const turn = Math.min(dart.turn, Math.asin(Math.min(widest, 1)));
  const sides = {
    half,
    leave,
    before: { length: s.frontRaglan, neck: before },
    behind: { length: s.backRaglan, neck: behind },
  };
  const darted =
    2 * dart.long * Math.sin(turn) >= NARROWEST_DART_MM ? level({ ...sides, dart: { ...dart, turn } }) : null;
  if (darted?.even) {
    const { tip, front, back } = darted;
    return {
      'front-raglan': front.path,
      'neck-front': [line(front.corner, front.leg)],
      'dart-front': [line(front.leg, tip)],
      'dart-back': [line(tip, back.leg)],
      'neck-back': [line(back.leg, back.corner)],
      'back-raglan': reversePath(back.path),
      tip,
    };
  }
  const { front, back } = level({ ...sides, dart: { long: 0, turn: 0 } });
  const neck = neckEdge(front.corner, back.corner);
  const [neckFront, neckBack] = splitPath(neck, (pathLength(neck) * before) / (before + behind));
  return {
    'front-raglan': front.path,
    'neck-front': neckFront,
    'neck-back': neckBack,
    'back-raglan': reversePath(back.path),
    tip: neckBack[0]?.from ?? front.corner,
  };
}

/** Level at both ends, so square to both slanting edges; straight where they rise equally high. */
function neckEdge(from: Point, to: Point): Path {
  const along = point(1, 0);
  return [from.y === to.y ? line(from, to) : hermite(from, along, to, along, 1 / 3, 1 / 3)];
}

type Dart = { readonly long: number; readonly turn: number };
type Side = { readonly length: number; readonly neck: number };
type Sides = {
  readonly half: number;
  readonly leave: Point;
  readonly before: Side;
  readonly behind: Side;
  readonly dart: Dart;
};
/** A slanting edge up to the neck's corner, and where the neck edge ends at the dart. */
type Slant = { readonly path: Path; readonly corner: Point; readonly leg: Point; readonly height: number };

/** Both slanting edges, the point of the shoulder moved to where they rise equally high; not `even` where they cannot. */
function level({ half, leave, before, behind, dart }: Sides) {
  const reach = ({ neck }: Side) => neck * Math.cos(dart.turn) + dart.long * Math.sin(dart.turn);
  const [ahead, after] = [reach(before), reach(behind)];
  const middle = (after - ahead) / 2;
  const room = (half - (ahead + after) / 2) * FARTHEST_OFF;
  const front = (off: number) => slant(before, { half, leave, dart }, off);
  const back = (off: number) => slant(behind, { half, leave, dart }, -off);
  const apart = (off: number) => front(off).height - back(off).height;
  const solved = brent(apart, middle - room, middle + room, { tolerance: SOLVED_MM });
  const off = solved.ok ? solved.x : middle;
  const [one, other] = [front(off), mirrored(back(off))];
  return { front: one, back: other, tip: point(-off, -one.height), even: solved.ok };
}

/** From the front underarm up to the neck's corner, so long; as low as it can be where that is too short. The point of the shoulder lies `off` before the middle. */
function slant(
  { length, neck }: Side,
  { half, leave, dart }: Pick<Sides, 'half' | 'leave' | 'dart'>,
  off: number,
): Slant {
  const up = point(-Math.sin(dart.turn), -Math.cos(dart.turn));
  const at = (height: number): Slant => {
    const leg = point(-off + up.x * dart.long, -height + up.y * dart.long);
    const corner = point(leg.x + up.y * neck, leg.y - up.x * neck);
    return { path: [hermite(point(-half, 0), leave, corner, up, UNDERARM_HANDLE, NECK_HANDLE)], corner, leg, height };
  };
  const { x, y } = at(0).corner;
  const lowest = (half + x) * LOWEST_RISE + y;
  const over = (height: number) => pathLength(at(height).path) - length;
  const solved = brent(over, lowest, lowest + length * 1.2, { tolerance: SOLVED_MM });
  return at(solved.ok ? solved.x : lowest);
}

const flipped = ({ x, y }: Point): Point => point(-x, y);
const mirrored = ({ path, corner, leg, height }: Slant): Slant => ({
  path: mirrorPath(path),
  corner: flipped(corner),
  leg: flipped(leg),
  height,
});
