import {
  type Curve,
  end,
  endTangent,
  hermite,
  lerp,
  line,
  type Path,
  type Point,
  pathLength,
  point,
  splitPath,
} from '../geometry';
import { block } from './block';
import { BODICE_OPTIONAL, BODICE_SIZES, bodiceShape } from './bodice';
import { dartLines } from './dart';
import { heightAt } from './height';

/** So far below the underarm, the neck and a slit a facing reaches, mm, but over no more than this share of the side (common practice, no source). */
const BELOW_MM = 20;
const MOST_OF_SIDE = 0.5;

/** Half a facing of neck and armhole in one piece: the bodice's own upper edges, and a free edge below them, square to side and centre. */
export const inOneFacing = block({
  sizes: BODICE_SIZES,
  optional: BODICE_OPTIONAL,
  edges: ['neckline', 'shoulder', 'armhole', 'side', 'outer', 'centre'],
  lines: [...dartLines, 'slit'],
  draw: (sizes) => {
    const { edges, lines } = bodiceShape('set-in', sizes);
    const { neckline = [], shoulder = [], armhole = [], side: whole = [] } = edges;
    const [side] = splitPath(whole, Math.min(BELOW_MM, pathLength(whole) * MOST_OF_SIDE));
    const down = endTangent(side);
    const low = Math.max(end(side).y, sizes.neckDrop + (sizes.slitLength ?? 0) + BELOW_MM);
    const middle = point(0, low);
    const outer = [hermite(end(side), point(-down.y, down.x), middle, point(-1, 0), 1 / 3, 1 / 3)];
    return {
      edges: {
        neckline,
        shoulder,
        armhole,
        side,
        outer,
        centre: [line(middle, point(0, sizes.neckDrop))],
      },
      lines: {
        ...dartsAbove(outer, lines),
        ...(lines.slit ? { slit: lines.slit } : {}),
      },
    };
  },
});

type Lines = ReturnType<typeof bodiceShape>['lines'];
type Darts = Partial<Record<(typeof dartLines)[number], Path>>;

/** The bodice's darts, as far as a facing reaches down: they end open at its free edge. */
function dartsAbove(outer: Path, lines: Lines): Darts {
  return Object.fromEntries(
    dartLines.flatMap((name) => {
      const path = lines[name];
      return path ? [[name, cutBelow(path, outer)]] : [];
    }),
  );
}

/** They stop just short of it, mm: a line in a piece may not leave it. */
const SHORT_MM = 0.5;
const HALVINGS = 12;

/** Straight lines that go down, to just before they would cross an edge below them. */
function cutBelow(path: Path, outer: Path): Path {
  const isAbove = ({ x, y }: Point) => y < heightAt(outer, x) - SHORT_MM;
  const kept: Curve[] = [];
  for (const { from, to } of path) {
    if (isAbove(to)) {
      kept.push(line(from, to));
      continue;
    }
    let [above, below] = [0, 1];
    for (let n = 0; n < HALVINGS; n++) {
      const middle = (above + below) / 2;
      if (isAbove(lerp(from, to, middle))) above = middle;
      else below = middle;
    }
    if (above > 0) kept.push(line(from, lerp(from, to, above)));
    break;
  }
  return kept;
}
