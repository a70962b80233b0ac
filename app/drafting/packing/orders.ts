import type { Job } from './job';
import type { Lay } from './lay';
import type { Shape } from './shape';

/** What is large: across the box, which mostly gives the shortest lay, by area, by the way round the box, by its longest side, along and across the strip. */
const SIZES: readonly ((shape: Shape) => number)[] = [
  ({ width, height }) => Math.hypot(width, height),
  ({ area }) => area,
  ({ width, height }) => width + height,
  ({ width, height }) => Math.max(width, height),
  ({ width }) => width,
  ({ height }) => height,
];

/** The orders in which pieces are laid first, each the largest first by another measure. */
export function orders({ stock, pieces }: Job): readonly (readonly number[])[] {
  return SIZES.map((size) => {
    const sizeOf = (index: number): number => size(stock.shapes[pieces[index]?.turns[0] ?? 0] as Shape);
    return pieces.map((_, index) => index).sort((a, b) => sizeOf(b) - sizeOf(a));
  });
}

/** The order with one piece laid sooner or later. */
export function oneMoved(order: readonly number[], random: () => number): readonly number[] {
  const out = [...order];
  const [moved = 0] = out.splice(Math.floor(random() * out.length), 1);
  out.splice(Math.floor(random() * (out.length + 1)), 0, moved);
  return out;
}

/** The movable pieces from left to right. */
export function leftFirst(lay: Lay): readonly number[] {
  const all = Array.from({ length: lay.movable }, (_, index) => index);
  return all.sort((a, b) => (lay.x[a] as number) - (lay.x[b] as number));
}
