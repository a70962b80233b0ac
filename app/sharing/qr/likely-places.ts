import type { Frame, Plane } from './plane';

/** Cells along the longer side that a picture is judged in. */
const CELLS = 48;
/** A cell is busy from this share of the busiest ones on. */
const BUSY_SHARE = 0.45;
/** A symbol is at least so many cells high and wide, and not much longer than wide even when it leans. */
const LEAST_CELLS = 3;
const LONGEST_SHAPE = 2.2;
const MOST_PLACES = 3;

/**
 * Where in a picture a QR may well be: patches, about square, where light changes often and in both directions, the
 * busiest first. Writing changes less up and down, drawings less altogether.
 */
export function likelyPlaces(plane: Plane): Frame[] {
  const side = Math.max(4, Math.round(Math.max(plane.width, plane.height) / CELLS));
  const across = Math.ceil(plane.width / side);
  const down = Math.ceil(plane.height / side);
  const busy = busyness(plane, side, across, down);
  const threshold = BUSY_SHARE * ([...busy].sort((a, b) => b - a)[Math.floor(busy.length / 50)] ?? 0);
  return patches(busy, across, threshold)
    .map((cells) => ({ box: boxOf(cells, across), sum: cells.reduce((sum, cell) => sum + (busy[cell] ?? 0), 0) }))
    .filter(({ box }) => box.width >= LEAST_CELLS && box.height >= LEAST_CELLS)
    .filter(({ box }) => Math.max(box.width / box.height, box.height / box.width) <= LONGEST_SHAPE)
    .sort((a, b) => b.sum - a.sum)
    .slice(0, MOST_PLACES)
    .map(({ box }) => ({
      x: (box.x - 1) * side,
      y: (box.y - 1) * side,
      width: (box.width + 2) * side,
      height: (box.height + 2) * side,
    }));
}

/** For each cell the lesser of how much light changes along it and down it. */
function busyness({ width, height, light }: Plane, side: number, across: number, down: number): Float32Array {
  const along = new Float32Array(across * down);
  const up = new Float32Array(across * down);
  for (let y = 1; y < height; y++)
    for (let x = 1; x < width; x++) {
      const at = y * width + x;
      const cell = Math.floor(y / side) * across + Math.floor(x / side);
      along[cell] = (along[cell] ?? 0) + Math.abs((light[at] ?? 0) - (light[at - 1] ?? 0));
      up[cell] = (up[cell] ?? 0) + Math.abs((light[at] ?? 0) - (light[at - width] ?? 0));
    }
  return along.map((value, cell) => Math.min(value, up[cell] ?? 0));
}

/** Cells over the threshold that touch, side by side or one above the other, as lists of cells. */
function patches(busy: Float32Array, across: number, threshold: number): number[][] {
  const seen = new Set<number>();
  const found: number[][] = [];
  for (let start = 0; start < busy.length; start++) {
    const patch: number[] = [];
    const open = [start];
    for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
      if (seen.has(cell) || !((busy[cell] ?? 0) > threshold)) continue;
      seen.add(cell);
      patch.push(cell);
      if (cell % across > 0) open.push(cell - 1);
      if (cell % across < across - 1) open.push(cell + 1);
      open.push(cell - across, cell + across);
    }
    if (patch.length > 0) found.push(patch);
  }
  return found;
}

function boxOf(cells: readonly number[], across: number): Frame {
  const columns = cells.map((cell) => cell % across);
  const rows = cells.map((cell) => Math.floor(cell / across));
  const [x, y] = [Math.min(...columns), Math.min(...rows)];
  return { x, y, width: Math.max(...columns) - x + 1, height: Math.max(...rows) - y + 1 };
}
