import { type Point, rotate } from '../geometry';
import type { Move } from './layout';

/** Where a move takes the points of a piece on its page. */
export function moved({ turn, x, y }: Move): (p: Point) => Point {
  return (p) => {
    const turned = turn === 0 ? p : rotate(p, turn);
    return { x: turned.x + x, y: turned.y + y };
  };
}
