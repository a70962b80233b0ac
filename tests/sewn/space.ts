/** A place or direction in space, mm: x right, y down, z towards who looks at the front. */
export type Spot = { readonly x: number; readonly y: number; readonly z: number };

export const spot = (x: number, y: number, z: number): Spot => ({ x, y, z });
export const plus = (a: Spot, b: Spot, times = 1): Spot =>
  spot(a.x + b.x * times, a.y + b.y * times, a.z + b.z * times);
export const dotted = (a: Spot, b: Spot): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const long = (a: Spot): number => Math.sqrt(dotted(a, a));
export const apart = (a: Spot, b: Spot): number => long(plus(a, b, -1));
export const crossed = (a: Spot, b: Spot): Spot =>
  spot(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);

/** One long; straight down where it has no length. */
export function headed(a: Spot): Spot {
  const length = long(a);
  return length > 0 ? spot(a.x / length, a.y / length, a.z / length) : spot(0, 1, 0);
}

/** The number at a place of a list; 0 beyond its ends. */
export const at = (list: ArrayLike<number>, index: number): number => list[index] ?? 0;

export const spotAt = (list: ArrayLike<number>, index: number): Spot =>
  spot(at(list, 3 * index), at(list, 3 * index + 1), at(list, 3 * index + 2));
