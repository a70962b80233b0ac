/** Perimeter of an ellipse from its half axes; Ramanujan's second approximation (1914), under 0.04 % off at worst. */
export function ellipsePerimeter(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

/**
 * Length along an ellipse with half axes `a` (across) and `b` (along the direction angle 90°), from angle `from` to `to`
 * (parameter angles, radians), by chords fine enough for a tape.
 */
export function ellipseArc(a: number, b: number, from: number, to: number): number {
  const steps = 64;
  let length = 0;
  for (let step = 0; step < steps; step++) {
    const [start, end] = [step, step + 1].map((each) => from + ((to - from) * each) / steps) as [number, number];
    length += Math.hypot(a * (Math.cos(end) - Math.cos(start)), b * (Math.sin(end) - Math.sin(start)));
  }
  return length;
}
