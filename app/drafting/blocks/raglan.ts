import {
  brent,
  type Curve,
  hermite,
  line,
  mirrorPath,
  type Path,
  type Point,
  pathLength,
  point,
  reversePath,
} from '../geometry';
import { block } from './block';
import { lowerSleeve } from './sleeve';

const HANDLE = 0.36;
const SOLVED_MM = 1e-4;
/** The neck edge stays narrower than the sleeve, as a share of half its width, and lies at most so far off its middle. */
const WIDEST_TOP = 1.4;
const FARTHEST_OFF = 0.8;
/** A head rises at least this share of how far it reaches inwards; an edge too short for that is gathered to. */
const LOWEST_RISE = 0.25;

/**
 * A raglan sleeve, laid flat: x right from the middle of the bicep line, front at the left; y down from that line, so the
 * sleeve's head has y < 0. Its two slanting edges are drawn as long as the body's, square to the level neck edge and to the
 * underarm seams; how high they rise follows, and how far the neck edge lies to the front. Sizes in mm: `frontRaglan`,
 * `backRaglan` (the body's edges), `neckTop` (the sleeve's share of the neckline), `bicep`, `cuff`, `underarmLength`.
 */
export const raglanSleeve = block({
  sizes: ['bicep', 'cuff', 'underarmLength', 'frontRaglan', 'backRaglan', 'neckTop'],
  edges: ['front-raglan', 'neck', 'back-raglan', 'back-underarm', 'cuff', 'front-underarm'],
  lines: ['over-arm'],
  draw: (s) => {
    const tube = lowerSleeve({ ...s, capHeight: 0, sleeveLength: s.underarmLength });
    const leave = point(tube.taper.y, tube.taper.x);
    const { front, back, from, to } = head(s, tube.backUnderarm.x, leave);
    const middle = point((from.x + to.x) / 2, (from.y + to.y) / 2);
    return {
      edges: { 'front-raglan': front, neck: [neckEdge(from, to)], 'back-raglan': back, ...tube.edges },
      lines: { 'over-arm': [line(middle, point(middle.x, 0))] },
    };
  },
});

type Raglan = Readonly<Record<'frontRaglan' | 'backRaglan' | 'neckTop', number>>;

/** Level at both ends, so square to both slanting edges; straight where they rise equally high. */
function neckEdge(from: Point, to: Point): Curve {
  const level = point(1, 0);
  return from.y === to.y ? line(from, to) : hermite(from, level, to, level, 1 / 3, 1 / 3);
}

type Head = { readonly front: Path; readonly back: Path; readonly from: Point; readonly to: Point };

/** Both slanting edges, with the neck edge moved to where they rise equally high. */
function head(s: Raglan, half: number, leave: Point): Head {
  const top = Math.min(s.neckTop, half * WIDEST_TOP);
  const room = (half - top / 2) * FARTHEST_OFF;
  const front = (off: number) => rise(s.frontRaglan, half, leave, top / 2 + off);
  const back = (off: number) => rise(s.backRaglan, half, leave, top / 2 - off);
  const solved = brent((off) => front(off).height - back(off).height, -room, room, { tolerance: SOLVED_MM });
  const off = solved.ok ? solved.x : 0;
  const [ahead, behind] = [front(off), back(off)];
  return {
    front: ahead.path,
    back: reversePath(mirrorPath(behind.path)),
    from: point(-top / 2 - off, -ahead.height),
    to: point(top / 2 - off, -behind.height),
  };
}

/** From the front underarm up to the neck edge at −x, `length` mm long; as low as it can be where that is too short. */
function rise(length: number, half: number, leave: Point, x: number): { readonly path: Path; readonly height: number } {
  const draw = (height: number): Path => [
    hermite(point(-half, 0), leave, point(-x, -height), point(0, -1), HANDLE, HANDLE),
  ];
  const lowest = (half - x) * LOWEST_RISE;
  const over = (height: number) => pathLength(draw(height)) - length;
  const solved = brent(over, lowest, lowest + length * 1.2, { tolerance: SOLVED_MM });
  const height = solved.ok ? solved.x : lowest;
  return { path: draw(height), height };
}
