import { at } from './space';

/** A curve through points (ascending) that never overshoots them (Fritsch and Carlson 1980, slopes by harmonic means). */
export function smooth(points: readonly (readonly [x: number, y: number])[]): (x: number) => number {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const rises = xs.slice(1).map((x, n) => (at(ys, n + 1) - at(ys, n)) / (x - at(xs, n)));
  const slopes = xs.map((_, n) => {
    if (n === 0 || n === xs.length - 1) return at(rises, Math.max(0, n - 1));
    const [before, after] = [at(rises, n - 1), at(rises, n)];
    return before * after > 0 ? (2 * before * after) / (before + after) : 0;
  });
  return (x) => {
    const last = xs.length - 2;
    const n = Math.max(
      0,
      Math.min(last, xs.findIndex((each) => each > x) < 0 ? last : xs.findIndex((each) => each > x) - 1),
    );
    const wide = at(xs, n + 1) - at(xs, n);
    const t = Math.max(0, Math.min(1, (x - at(xs, n)) / wide));
    const [u, tt] = [1 - t, t * t];
    return (
      at(ys, n) * (1 + 2 * t) * u * u +
      at(slopes, n) * wide * t * u * u +
      at(ys, n + 1) * tt * (3 - 2 * t) -
      at(slopes, n + 1) * wide * tt * u
    );
  };
}
