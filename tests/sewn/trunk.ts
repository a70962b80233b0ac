import { ellipsePerimeter } from '../toys/solids';
import { smooth } from './smooth';
import { level, type Part } from './solid';
import { spot } from './space';

/**
 * A girth at a height (mm, down from the shoulder's neck end): half its width, which share of it lies before the side
 * lines, and how far its middle lies behind the plane of the sides.
 */
export type Station = {
  readonly down: number;
  readonly girth: number;
  readonly across: number;
  readonly front: number;
  readonly back: number;
};

/** One section: half width, half depth before and behind, how far its middle lies back. */
export type Section = {
  readonly across: number;
  readonly before: number;
  readonly behind: number;
  readonly back: number;
};

export type Trunk = { readonly part: Part; readonly section: (down: number) => Section };

/** What lies between two rows of a section is drawn straight. */
const ROWS_A_MM = 2;

/**
 * A trunk of sections, each two half ellipses that share a width; from `closes` on it is rounded off to `end` by a
 * superellipse of the power `full` (2: an ellipsoid; more: fuller), and above its first station by a dome.
 */
export function trunk(stations: readonly Station[], closes: number, end: number, full: number): Trunk {
  const first = stations[0]?.down ?? 0;
  const count = Math.ceil((end - first) * ROWS_A_MM) + 2;
  const columns = [
    (s: Station) => s.across,
    (s: Station) => depthOf(s.across, s.girth * s.front),
    (s: Station) => depthOf(s.across, s.girth * (1 - s.front)),
    (s: Station) => s.back,
  ].map((column) => {
    const curve = smooth(stations.map((station) => [station.down, column(station)]));
    return Float64Array.from({ length: count }, (_, n) => curve(first + n / ROWS_A_MM));
  });
  const [across, before, behind, backs] = columns;
  if (!across || !before || !behind || !backs) throw new Error('a trunk without sections');
  const read = (list: Float64Array, down: number) => {
    const place = Math.max(0, Math.min(count - 1.001, (down - first) * ROWS_A_MM));
    const row = Math.floor(place);
    const here = list[row] ?? 0;
    return here + ((list[row + 1] ?? here) - here) * (place - row);
  };
  const dome = read(across, first);
  const distance = level((x, y, z) => {
    const deep = z + read(backs, y);
    const out = x / read(across, y);
    const off = deep / read(deep > 0 ? before : behind, y);
    const ring = Math.sqrt(out * out + off * off);
    if (y > closes) return (ring ** full + ((y - closes) / (end - closes)) ** full) ** (1 / full) - 1;
    return y < first ? Math.sqrt(ring * ring + ((first - y) / dome) ** 2) - 1 : ring - 1;
  });
  const section = (down: number): Section => {
    const past = Math.max(0, Math.min(1, (down - closes) / (end - closes)));
    const left = (1 - past ** full) ** (1 / full);
    const part = (list: Float64Array) => read(list, down) * left;
    return { across: part(across), before: part(before), behind: part(behind), back: read(backs, down) };
  };
  const reach = (end - first) / 2 + dome + Math.max(...across, ...before, ...behind);
  return { part: { distance, centre: spot(0, (first + end) / 2, 0), reach }, section };
}

/** Depth of a half ellipse of a half width and a length round, mm; at least a tenth of the width. */
function depthOf(across: number, round: number): number {
  let [low, high] = [0.1 * across, 4 * round];
  for (let n = 0; n < 40; n++) {
    const middle = (low + high) / 2;
    if (ellipsePerimeter(across, middle) / 2 < round) low = middle;
    else high = middle;
  }
  return low;
}
