// Points and directions on a plane (paper, a figure, a picture): x right, y down. Turns are named as seen: with y down, a
// positive angle and a positive cross product turn clockwise. The one vector library; geometry in drafting builds on it.

/** A place, or a step from one place to another. */
export type Point = { readonly x: number; readonly y: number };

export function point(x: number, y: number): Point {
  return { x, y };
}

export function add(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The step from b to a. */
export function subtract(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function scale(p: Point, k: number): Point {
  return { x: p.x * k, y: p.y * k };
}

export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

/** Positive where b lies clockwise of a, as seen. */
export function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

export function norm(p: Point): number {
  return Math.sqrt(p.x * p.x + p.y * p.y);
}

export function distance(a: Point, b: Point): number {
  return norm(subtract(a, b));
}

/** The direction of p, one long; the zero step stays zero. */
export function unit(p: Point): Point {
  const length = norm(p);
  return length > 0 ? { x: p.x / length, y: p.y / length } : { x: 0, y: 0 };
}

/** Turns p about the origin, clockwise as seen for positive radians. */
export function rotate(p: Point, radians: number): Point {
  const cos = Math.cos(radians);
  const sin = Math.sin(radians);
  return { x: p.x * cos - p.y * sin, y: p.x * sin + p.y * cos };
}

/** From a at t = 0 to b at t = 1. */
export function lerp(a: Point, b: Point, t: number): Point {
  return { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
}

/** A quarter turn clockwise as seen: the right hand of someone walking along p. */
export function right(p: Point): Point {
  return { x: -p.y, y: p.x };
}

/** A quarter turn counter-clockwise as seen: the left hand of someone walking along p. */
export function left(p: Point): Point {
  return { x: p.y, y: -p.x };
}

/** The unsigned angle between two directions, in [0, π]; 0 where either has no length. */
export function angleBetween(u: Point, v: Point): number {
  return Math.atan2(Math.abs(cross(u, v)), dot(u, v));
}

/** Its mirror image about the centre line. */
export function mirror(p: Point): Point {
  return { x: -p.x, y: p.y };
}

/** `from`, moved `along` a direction. */
export function moved(from: Point, along: Point, by: number): Point {
  return add(from, scale(along, by));
}

/** The direction at `angle` radians, clockwise as seen from straight right. */
export function heading(angle: number): Point {
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** The direction of p, one long; straight right where p has none. */
export function bearing(p: Point): Point {
  return norm(p) > 0 ? unit(p) : { x: 1, y: 0 };
}

/** The direction from a to b, one long; straight right where they are one. */
export function toward(a: Point, b: Point): Point {
  return bearing(subtract(b, a));
}
