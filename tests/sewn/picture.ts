import { png } from './png';
import type { Solid } from './solid';
import { crossed, headed, plus, type Spot, spot } from './space';

/** A triangle in space and how much it is strained (1 % is 0.01). */
export type Shown = { readonly corners: readonly [Spot, Spot, Spot]; readonly strain: number };

/** What of space a view looks at: its right and its way towards who looks. */
const VIEWS: readonly { readonly right: Spot; readonly near: Spot }[] = [
  { right: spot(1, 0, 0), near: spot(0, 0, 1) },
  { right: spot(-1, 0, 0), near: spot(0, 0, -1) },
  { right: spot(0, 0, -1), near: spot(1, 0, 0) },
  { right: spot(0.8, 0, -0.6), near: spot(0.6, 0, 0.8) },
];
const WIDE = 420;
const MARGIN_MM = 25;
/** The body is shown drawn in a little: between its points the mesh lies deeper than cloth would. */
const SUNK_MM = 1.5;
/** From no strain (grey blue) over 6 % (yellow) to 12 % (red). */
const FULL_STRAIN = 0.12;

/** Front, back, side and aslant, the cloth coloured by strain, the body grey. */
export function picture(shown: readonly Shown[], body: Solid): Uint8Array {
  const all = shown.flatMap(({ corners }) => corners);
  const span = (of: (at: Spot) => number) =>
    [Math.min(...all.map(of)) - MARGIN_MM, Math.max(...all.map(of)) + MARGIN_MM] as const;
  const [top, foot] = span(({ y }) => y);
  const reach = Math.max(...all.map(({ x, z }) => Math.hypot(x, z))) + MARGIN_MM;
  const scale = WIDE / (2 * reach);
  const high = Math.round((foot - top) * scale);
  const pixels = new Uint8Array(3 * WIDE * VIEWS.length * high).fill(255);
  VIEWS.forEach((view, n) => {
    const depth = new Float64Array(WIDE * high).fill(Number.NEGATIVE_INFINITY);
    const set = (x: number, y: number, near: number, colour: readonly number[]) => {
      if (x < 0 || y < 0 || x >= WIDE || y >= high || near <= (depth[y * WIDE + x] ?? 0)) return;
      depth[y * WIDE + x] = near;
      pixels.set(colour, 3 * (y * WIDE * VIEWS.length + n * WIDE + x));
    };
    const eye = (at: Spot) => ({
      x: (dot(at, view.right) + reach) * scale,
      y: (at.y - top) * scale,
      near: dot(at, view.near),
    });
    for (const { corners, strain } of shown) {
      const [a, b, c] = corners;
      const face = headed(crossed(plus(b, a, -1), plus(c, a, -1)));
      fill([eye(a), eye(b), eye(c)], lit(heat(strain), Math.abs(dot(face, view.near))), set);
    }
    for (let y = 0; y < high; y += 2)
      for (let x = 0; x < WIDE; x += 2) {
        const place = (near: number) => {
          const across = x / scale - reach;
          return spot(
            view.right.x * across + view.near.x * near,
            y / scale + top,
            view.right.z * across + view.near.z * near,
          );
        };
        let near = reach;
        for (let k = 0; k < 40 && near > -reach; k++) {
          const at = place(near);
          const left = body.distance(at.x, at.y, at.z) + SUNK_MM;
          if (left < 0.5) {
            const grey = lit([205, 200, 195], Math.abs(dot(body.outward(at.x, at.y, at.z), view.near)));
            for (const [dx, dy] of [
              [0, 0],
              [1, 0],
              [0, 1],
              [1, 1],
            ] as const)
              set(x + dx, y + dy, near, grey);
            break;
          }
          near -= 0.8 * left;
        }
      }
  });
  return png(WIDE * VIEWS.length, high, pixels);
}

const dot = (a: Spot, b: Spot) => a.x * b.x + a.y * b.y + a.z * b.z;
const lit = (colour: readonly number[], facing: number) => colour.map((each) => each * (0.45 + 0.55 * facing));

function heat(strain: number): readonly number[] {
  const share = Math.max(0, Math.min(1, strain / FULL_STRAIN));
  const [cold, warm, hot] = [
    [150, 175, 205],
    [250, 220, 90],
    [220, 40, 40],
  ] as const;
  const [from, to, t] = share < 0.5 ? [cold, warm, 2 * share] : [warm, hot, 2 * share - 1];
  return from.map((each, n) => each + ((to[n] ?? 0) - each) * t);
}

type Eyed = { readonly x: number; readonly y: number; readonly near: number };

function fill(
  [a, b, c]: readonly [Eyed, Eyed, Eyed],
  colour: readonly number[],
  set: (x: number, y: number, near: number, colour: readonly number[]) => void,
): void {
  const whole = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
  if (Math.abs(whole) < 1e-9) return;
  for (let y = Math.floor(Math.min(a.y, b.y, c.y)); y <= Math.max(a.y, b.y, c.y); y++)
    for (let x = Math.floor(Math.min(a.x, b.x, c.x)); x <= Math.max(a.x, b.x, c.x); x++) {
      const v = ((x - a.x) * (c.y - a.y) - (c.x - a.x) * (y - a.y)) / whole;
      const w = ((b.x - a.x) * (y - a.y) - (x - a.x) * (b.y - a.y)) / whole;
      if (v >= -0.01 && w >= -0.01 && v + w <= 1.01)
        set(x, y, a.near + v * (b.near - a.near) + w * (c.near - a.near), colour);
    }
}
