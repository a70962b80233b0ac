import type { Joint, Step } from '../holds/glued/chains';
import type { Half, Side } from '../holds/glued/halves';

/** A spot on an edge: mm from the edge's start. */
export type OnEdge = { readonly half: Half; readonly side: Side; readonly along: number };
/** Two spots that are sewn on each other; `fold` where they are one in the cloth. */
export type Stitch = { readonly one: OnEdge; readonly two: OnEdge; readonly seam: string };

/** Ends nearer to each other than this share of an edge of the mesh are one place. */
const ONE_PLACE = 0.35;

/** Where a seam's two chains are stitched to each other: at the ends of all edges, and in even steps between them. */
export function stitches({ one, two, seam }: Joint, edge: number): Stitch[] {
  const [ours, theirs] = [ends(one), ends(two)];
  // What is gathered in has its points further apart.
  const short = Math.min(ours.long, theirs.long);
  const near = (ONE_PLACE * edge) / Math.max(ours.long, theirs.long);
  const pairs = paired(ours.shares, theirs.shares, near);
  return pairs.slice(1).flatMap(([a, b], n) => {
    const [fromA, fromB] = pairs[n] ?? [a, b];
    const count = Math.max(1, Math.ceil(Math.max((a - fromA) * short, (b - fromB) * short) / edge));
    return Array.from({ length: count + 1 }, (_, k): Stitch[] => {
      const share = k / count;
      const first = place(one, fromA + (a - fromA) * share, share < 0.5);
      const second = place(two, fromB + (b - fromB) * share, share < 0.5);
      return first && second ? [{ one: first, two: second, seam: seam.name }] : [];
    }).flat();
  });
}

const sideOf = ({ half, side }: Step) => half.sides.find((each) => each.name === side);
const lengths = (chain: readonly Step[]) => chain.map((step) => sideOf(step)?.length ?? 0);

function ends(chain: readonly Step[]) {
  const all = lengths(chain);
  const long = all.reduce((sum, each) => sum + each, 0);
  const shares = [0];
  for (const each of all) shares.push((shares[shares.length - 1] ?? 0) + each / long);
  return { long, shares };
}

/** Ends of both chains as pairs of shares, in order; an end that stands alone is met at its own share. */
function paired(ours: readonly number[], theirs: readonly number[], near: number): [number, number][] {
  const met = ours.map((a): [number, number] => [a, theirs.find((b) => Math.abs(a - b) < near) ?? a]);
  const alone = theirs.filter((b) => met.every(([, other]) => other !== b)).map((b): [number, number] => [b, b]);
  return [...met, ...alone].sort(([a], [b]) => a - b);
}

/** At the end of one edge and the start of the next, `after` takes the next. */
function place(chain: readonly Step[], share: number, after: boolean): OnEdge | undefined {
  const all = lengths(chain);
  let left = share * all.reduce((sum, each) => sum + each, 0);
  for (const [n, step] of chain.entries()) {
    const [side, long] = [sideOf(step), all[n] ?? 0];
    const last = n === chain.length - 1;
    if (side && (left < long - 1e-6 || last || (left < long + 1e-6 && !after)))
      return { half: step.half, side, along: step.way > 0 ? Math.min(left, long) : Math.max(0, long - left) };
    left -= long;
  }
  return undefined;
}
