/** A place or a direction: x right, y down. */
export type Point = { readonly x: number; readonly y: number };

export const point = (x: number, y: number): Point => ({ x, y });
export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const times = (a: Point, by: number): Point => ({ x: a.x * by, y: a.y * by });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
export const mirror = (a: Point): Point => ({ x: -a.x, y: a.y });
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The place a share `t` of the way from `a` to `b`. */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** `from`, moved `along` a direction. */
export const moved = (from: Point, along: Point, by: number): Point => add(from, times(along, by));

/** One long, in the direction of `a`; straight right when `a` has none. */
export function unit(a: Point): Point {
  const length = Math.hypot(a.x, a.y);
  return length > 0 ? times(a, 1 / length) : { x: 1, y: 0 };
}

/** A quarter turn clockwise as seen: right becomes down. */
export const turned = (a: Point): Point => ({ x: -a.y, y: a.x });

/** The direction at `angle` radians, clockwise as seen from straight right. */
export const heading = (angle: number): Point => ({ x: Math.cos(angle), y: Math.sin(angle) });

/** The direction from `a` to `b`, one long. */
export const toward = (a: Point, b: Point): Point => unit(minus(b, a));
