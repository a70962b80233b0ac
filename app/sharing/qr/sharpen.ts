import type { Plane } from './plane';

/**
 * Brings back what blur took: adds `amount` times the difference from a blurred copy. `radius` (pixels) should be
 * about the blur's own. Contrast is stretched first, so that amounts mean the same in every light.
 */
export function sharpened(plane: Plane, radius: number, amount: number): Plane {
  const even = stretched(plane);
  if (amount === 0) return even;
  const soft = smoothed(smoothed(even, radius), radius);
  const light = even.light.map((value, at) => value + amount * (value - (soft.light[at] ?? value)));
  return { ...even, light };
}

/** All but the darkest and the brightest hundredth spread over the full range. */
function stretched({ width, height, light }: Plane): Plane {
  const counts = new Uint32Array(256);
  for (const value of light) counts[Math.round(value)] = (counts[Math.round(value)] ?? 0) + 1;
  const dark = levelAfter(counts, light.length / 100);
  const bright = 255 - levelAfter(counts.reverse(), light.length / 100);
  const gain = 255 / Math.max(1, bright - dark);
  return { width, height, light: light.map((value) => (value - dark) * gain) };
}

function levelAfter(counts: Uint32Array, share: number): number {
  let passed = 0;
  return Math.max(
    0,
    counts.findIndex((count) => {
      passed += count;
      return passed > share;
    }),
  );
}

/** The mean over a square of 2 · radius + 1: along rows, then along columns; beyond the rim, the rim. */
function smoothed({ width, height, light }: Plane, radius: number): Plane {
  const rows = new Float32Array(light.length);
  for (let y = 0; y < height; y++) runningMean(light, rows, { from: y * width, step: 1, count: width, radius });
  const both = new Float32Array(light.length);
  for (let x = 0; x < width; x++) runningMean(rows, both, { from: x, step: width, count: height, radius });
  return { width, height, light: both };
}

type Run = { readonly from: number; readonly step: number; readonly count: number; readonly radius: number };

function runningMean(source: Float32Array, target: Float32Array, { from, step, count, radius }: Run): void {
  const at = (place: number) => source[from + Math.min(count - 1, Math.max(0, place)) * step] ?? 0;
  let sum = 0;
  for (let place = -radius; place <= radius; place++) sum += at(place);
  for (let place = 0; place < count; place++) {
    target[from + place * step] = sum / (2 * radius + 1);
    sum += at(place + radius + 1) - at(place - radius);
  }
}
