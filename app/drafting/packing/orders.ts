import type { Job } from './job';
import type { Lay } from './lay';
import type { Shape } from './shape';

/** The orders in which pieces are laid first: largest first, tallest first, widest first. */
export function orders({ stock, pieces }: Job): readonly (readonly number[])[] {
  const sizes: readonly ((shape: Shape) => number)[] = [(s) => s.area, (s) => s.height, (s) => s.width];
  return sizes.map((size) => {
    const sizeOf = (index: number): number => size(stock.shapes[pieces[index]?.turns[0] ?? 0] as Shape);
    return pieces.map((_, index) => index).sort((a, b) => sizeOf(b) - sizeOf(a));
  });
}

/** The movable pieces from left to right. */
export function leftFirst(lay: Lay): readonly number[] {
  const all = Array.from({ length: lay.movable }, (_, index) => index);
  return all.sort((a, b) => (lay.x[a] as number) - (lay.x[b] as number));
}
