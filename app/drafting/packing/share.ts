import type { Shape } from './shape';
import type { Stock } from './stock';
import { depthIn } from './sums';

/**
 * Whether two shapes of the stock may lie in one box as far as a grid of shifts tells: where every shift of the grid is an
 * overlap, so is every other that keeps the shapes further apart than the stock does by the grid's half diagonal.
 */
export function mayShare(
  stock: Stock,
  one: number,
  other: number,
  box: { width: number; height: number },
  step: number,
): boolean {
  const [a, b] = [stock.shapes[one] as Shape, stock.shapes[other] as Shape];
  if (a.width + b.width + stock.apart <= box.width || a.height + b.height + stock.apart <= box.height) return true;
  const sums = stock.sums(one, other);
  const [x0, y0] = [(b.width - a.width) / 2, (b.height - a.height) / 2];
  return grid(a.width - box.width, box.width - b.width, step).some((x) =>
    grid(a.height - box.height, box.height - b.height, step).some((y) => depthIn(sums, x + x0, y + y0) <= 0),
  );
}

function grid(from: number, to: number, step: number): readonly number[] {
  const steps = Math.max(1, Math.ceil((to - from) / step));
  return Array.from({ length: steps + 1 }, (_, n) => from + ((to - from) * n) / steps);
}
