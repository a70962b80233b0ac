// How deep a shift lies in the sums of two shapes. Each cell of their chart remembers which of the sums reach into it: of
// shapes with many corners few parts meet in one place.

import { type Charts, cellOf } from './chart';
import { HEAD, PLANE, type Sums } from './sums';

/** Where the first list may begin: 0 says that there is none yet. */
const FIRST = 1;

/** How many numbers all lists have room for at first; they get twice as many when those are used up. */
const ROOM = 1 << 16;

/** How much further than its half a cell reaches, against rounding, as a share of it. */
const BEYOND = 1e-6;

/** For each cell where its list begins; and the lists: how many sums, and where each of them begins, the deepest first. */
export type Lists = { readonly of: Int32Array; numbers: Int32Array; next: number };

export function listsOf({ cells }: Charts): Lists {
  return { of: new Int32Array(cells.length), numbers: new Int32Array(ROOM), next: FIRST };
}

/** Where the half plane stands by which the last depth was found. A variable, since `depthIn` runs millions of times. */
export let nearestPlane = 0;

/**
 * How deep a shift lies in the deepest of the sums, 0 where in none; some depth of at least `enough` where it is deeper.
 * `view` is where the two shapes' view of their chart begins.
 */
export function depthIn(
  { charts, lists }: { readonly charts: Charts; readonly lists: Lists },
  view: number,
  sums: Sums,
  x: number,
  y: number,
  enough = Infinity,
): number {
  const cell = cellOf(charts, view, x, y);
  const begin = (lists.of[cell] as number) || listed(charts, lists, view, sums, x, y, cell);
  const { numbers } = lists;
  const last = begin + (numbers[begin] as number);
  let deepest = 0;
  for (let index = begin + 1; index <= last; index += 1) {
    const at = numbers[index] as number;
    if (
      x > (sums[at] as number) &&
      x < (sums[at + 2] as number) &&
      y > (sums[at + 1] as number) &&
      y < (sums[at + 3] as number)
    ) {
      const end = at + HEAD + PLANE * (sums[at + 4] as number);
      let depth = Infinity;
      let nearest = 0;
      for (let plane = at + HEAD; plane < end; plane += PLANE) {
        const room = (sums[plane + 2] as number) - (sums[plane] as number) * x - (sums[plane + 1] as number) * y;
        if (room < depth) {
          depth = room;
          nearest = plane;
          if (room <= deepest) break;
        }
      }
      if (depth > deepest) {
        deepest = depth;
        nearestPlane = nearest;
        if (depth >= enough) return depth;
      }
    }
  }
  return deepest;
}

/** Makes the list of the cell that the shift lies in, and says where it begins. */
function listed(
  { views, per }: Charts,
  lists: Lists,
  view: number,
  sums: Sums,
  x: number,
  y: number,
  cell: number,
): number {
  const across = 0.5 * (views[view + 3] as number);
  const along = 0.5 * (views[view + 4] as number);
  const middleX = (Math.trunc(x * per + across) + 0.5 - across) / per;
  const middleY = (Math.trunc(y * per + along) + 0.5 - along) / per;
  const half = (0.5 + BEYOND) / per;
  const begin = lists.next;
  const numbers = roomIn(lists, 1 + sums.length / HEAD);
  let count = 0;
  for (let at = 0; at < sums.length; ) {
    const end = at + HEAD + PLANE * (sums[at + 4] as number);
    let depth = Infinity;
    for (let plane = at + HEAD; plane < end && depth > -Infinity; plane += PLANE) {
      const nx = sums[plane] as number;
      const ny = sums[plane + 1] as number;
      const room = (sums[plane + 2] as number) - nx * middleX - ny * middleY;
      depth = room + (Math.abs(nx) + Math.abs(ny)) * half <= 0 ? -Infinity : Math.min(depth, room);
    }
    if (depth > -Infinity) {
      let to = count;
      for (; to > 0 && (depths[to - 1] as number) < depth; to -= 1) {
        depths[to] = depths[to - 1] as number;
        numbers[begin + 1 + to] = numbers[begin + to] as number;
      }
      depths[to] = depth;
      numbers[begin + 1 + to] = at;
      count += 1;
    }
    at = end;
  }
  numbers[begin] = count;
  lists.next = begin + 1 + count;
  lists.of[cell] = begin;
  return begin;
}

/** How deep the middle of the cell under work lies in each sum of its list. */
const depths: number[] = [];

/** The lists' numbers, with room for so many more. */
function roomIn(lists: Lists, more: number): Int32Array {
  if (lists.next + more > lists.numbers.length) {
    const larger = new Int32Array(2 * lists.numbers.length + Math.ceil(more));
    larger.set(lists.numbers);
    lists.numbers = larger;
  }
  return lists.numbers;
}
