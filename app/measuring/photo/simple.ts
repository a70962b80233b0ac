import { cross, dot, subtract } from '../../body/point';
import type { Spot } from './space';

/** Whether an outline (of any unit) goes round without crossing or touching itself. */
export function isSimple(outline: readonly Spot[]): boolean {
  const at = (index: number) => outline[index % outline.length] as Spot;
  return outline.every((_, i) =>
    outline.every((_, j) => {
      if (j <= i) return true;
      const [a, b, c, d] = [at(i), at(i + 1), at(j), at(j + 1)];
      if (b === c) return !foldsBack(a, b, d);
      if (d === a) return !foldsBack(c, a, b);
      return !meet(a, b, c, d);
    }),
  );
}

const foldsBack = (before: Spot, corner: Spot, after: Spot): boolean => {
  const [back, on] = [subtract(before, corner), subtract(after, corner)];
  return cross(back, on) === 0 && dot(back, on) >= 0;
};

function meet(a: Spot, b: Spot, c: Spot, d: Spot): boolean {
  const side = (p: Spot, q: Spot, r: Spot) => Math.sign(cross(subtract(q, p), subtract(r, p)));
  const [one, two, three, four] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (one === 0 && two === 0) return between(a, c, d) || between(b, c, d) || between(c, a, b);
  return one * two <= 0 && three * four <= 0;
}

const between = (p: Spot, a: Spot, b: Spot): boolean => dot(subtract(p, a), subtract(p, b)) <= 0;
