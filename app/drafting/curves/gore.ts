import { brent, cubic, type Path, point } from '../geometry';

/** One of `count` gores of a crown: `round` at the brim, `over` down from the crown to it, mm. */
export type GoreFrame = { readonly count: number; readonly round: number; readonly over: number };

const SOLVED_MM = 1e-6;
/** Cubics that follow the curve: enough that none is off by a hundredth of a millimetre. */
const STEPS = 24;

/**
 * Half a gore's width at a way down from the crown, and how it grows there. The plain sine of a sphere's gores ends in too sharp a
 * crown: a term that vanishes at the brim and opens the point until all gores together lie flat there (geometry).
 */
function goreAt({ count, round, over }: GoreFrame) {
  const radius = radiusOf(round, over);
  const most = Math.min(over / radius, Math.PI / 2);
  const sharp = (count / Math.PI) * Math.tan(Math.PI / count) - 1;
  const cut = Math.cos(most) ** 2;
  const opened = sharp / (1 - cut);
  return (down: number) => {
    const turn = Math.min(down / radius, Math.PI / 2);
    const [sine, cosine] = [Math.sin(turn), Math.cos(turn)];
    const more = 1 + opened * (cosine ** 2 - cut);
    const width = ((Math.PI * radius) / count) * sine * more;
    const grows = turn < Math.PI / 2 ? (Math.PI / count) * (cosine * more - 2 * opened * sine ** 2 * cosine) : 0;
    return { width, grows };
  };
}

/** The sphere that a crown lies on: less than its half where it is shallow, then girth = 2π·r·sin(over/r) (geometry). */
function radiusOf(round: number, over: number): number {
  const radius = round / (2 * Math.PI);
  if (over >= round / 4) return radius;
  const miss = (r: number) => 2 * Math.PI * r * Math.sin(over / r) - round;
  const solved = brent(miss, (2 * over) / Math.PI, over * FLATTEST, { tolerance: SOLVED_MM });
  return solved.ok ? solved.x : over * FLATTEST;
}

/** Flatter than a sphere of so many times its depth, a crown is a disc. */
const FLATTEST = 60;

/** One seam of a gore from the crown, at 0, 0, down to `until` on its way, x right. */
export function goreSeam(frame: GoreFrame, until: number): Path {
  const at = goreAt(frame);
  const step = until / STEPS;
  return Array.from({ length: STEPS }, (_, n) => {
    const [a, b] = [n * step, (n + 1) * step];
    const [from, to] = [at(a), at(b)];
    return cubic(
      point(from.width, a),
      point(from.width + (from.grows * step) / 3, a + step / 3),
      point(to.width - (to.grows * step) / 3, b - step / 3),
      point(to.width, b),
    );
  });
}
