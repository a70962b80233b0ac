import { add, bearing, heading, lerp, moved, type Point, point, right, scale, toward } from '../../body/point';

/** A round or oval shape as points: half widths across and down, turned by `angle` radians. */
export function oval(center: Point, halfAcross: number, halfDown: number, angle = 0): Point[] {
  const across = heading(angle);
  const down = right(across);
  return Array.from({ length: 8 }, (_, step) => {
    const around = heading((step * Math.PI) / 4);
    return add(center, add(scale(across, around.x * halfAcross), scale(down, around.y * halfDown)));
  });
}

/**
 * An arm, leg, tail or ear as a closed outline: an axis from the root on, and half widths at its points. Both ends are
 * rounded by the half width there.
 */
export function limb(axis: readonly Point[], halves: readonly number[]): Point[] {
  const stations = axis.map((here, index) => {
    const [before, after] = [axis[index - 1] ?? here, axis[index + 1] ?? here];
    return { here, ahead: toward(before, after), half: halves[index] ?? 0 };
  });
  const side = (sign: number) => stations.map(({ here, ahead, half }) => moved(here, right(ahead), sign * half));
  return [...side(-1), ...cap(stations.at(-1), 1), ...side(1).reverse(), ...cap(stations[0], -1)];
}

/** Where a limb's axis is at a share `t` of its length, and a place ahead of it. */
export function station(axis: readonly Point[], t: number): { at: Point; toward: Point } {
  const [root, tip] = [axis[0] ?? point(0, 0), axis.at(-1) ?? point(0, 0)];
  const bend = axis.length > 2 ? (axis[Math.floor(axis.length / 2)] ?? root) : lerp(root, tip, 0.5);
  const at = quadratic(root, bend, tip, t);
  return { at, toward: add(at, bearing(add(scale(toward(root, bend), 1 - t), scale(toward(bend, tip), t)))) };
}

/** Through `bend` at the middle. */
function quadratic(root: Point, bend: Point, tip: Point, t: number): Point {
  const handle = add(scale(bend, 2), scale(add(root, tip), -0.5));
  return lerp(lerp(root, handle, t), lerp(handle, tip, t), t);
}

type Station = { readonly here: Point; readonly ahead: Point; readonly half: number };

function cap(end: Station | undefined, sign: number): Point[] {
  if (!end) return [];
  const { here, ahead, half } = end;
  return [-0.7, 0, 0.7].map((across) =>
    add(
      here,
      add(scale(ahead, sign * half * Math.sqrt(1 - across * across)), scale(right(ahead), sign * half * across)),
    ),
  );
}
