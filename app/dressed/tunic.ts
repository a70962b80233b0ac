import { type Point, point } from '../body/point';
import type { Part, Stage } from '../measuring/figure';
import { bothHalves, cloth, corner, drawnSeam, fold, otherHalf, stitches } from './cloth';
import type { Tunic } from './clothes';

/** The tunic stands off the body by this share, and neck and hem are seen a little from above. */
const OFF = 1.05;
const SAG = 0.1;
/** Its gores meet so far from the middle, of half its width: 30 degrees round a circle. */
const SEAM = 0.5;
/** Levels that its sides are drawn through; gathers reach down past the first of them. */
const LEVELS = 6;
const GATHERED = 3;

/** A tunic round a round body, from the neck to the hem; what comes through its sides, and a tail, lie over it. */
export function tunicParts({ winged, drawn }: Tunic, { parts, places }: Stage, view: 'front' | 'back'): Part[] {
  const { neckEnd, hem } = places;
  const trunk = parts.find(({ name }) => name === 'trunk')?.points ?? [];
  if (!neckEnd || !hem) return [];
  const sides = Array.from({ length: LEVELS + 1 }, (_, n) => {
    const y = neckEnd.y + ((hem.y - neckEnd.y) * n) / LEVELS;
    // Straight cloth falls from the fullest line, at 0.
    return point(OFF * halfAt(trunk, drawn ? Math.min(y, 0) : y), y);
  });
  const [first, last] = [sides[0], sides[LEVELS]];
  if (!first || !last) return [];
  const sagged = ({ x, y }: Point, share: number) => point(share * x, y + SAG * x * (1 - share * share));
  const edge = (at: Point) => [sagged(at, 0.6), sagged(at, 0)];
  const right = [...corner(first), ...sides.slice(1, -1), ...corner(last), ...edge(last)];
  const down = (share: number, until = sides.length) => sides.slice(0, until).map((at) => sagged(at, share));
  const gathers = [0.25, 0.5, 0.75].map((share) => fold(down(share, GATHERED)));
  const lines = drawn
    ? [...gathers, ...gathers.map(({ points }) => fold(otherHalf(points)))]
    : [drawnSeam(down(SEAM)), drawnSeam(otherHalf(down(SEAM))), ...(view === 'back' ? [drawnSeam(down(0))] : [])];
  const over = (part: Part) =>
    (winged && part.name.startsWith('wing')) || (view === 'back' && part.name.startsWith('tail'));
  return [
    cloth(bothHalves([...edge(first).reverse(), ...right])),
    ...lines,
    stitches([-0.96, -0.5, 0, 0.5, 0.96].map((share) => sagged(point(last.x, last.y - 4), share))),
    ...parts.filter(over),
  ];
}

/** Half the width of an outline at a height. */
function halfAt(outline: readonly Point[], y: number): number {
  const on = outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from;
    const [low, high] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
    if (y < low || y > high || high === low) return [];
    return [Math.abs(from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y))];
  });
  return Math.max(0, ...on);
}
