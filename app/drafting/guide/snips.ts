import type { Edge, Ref, Seam } from '../draft-types';
import { add, end, endTangent, type Path, type Point, point, polyline, scale, startTangent } from '../geometry';
import type { Kind } from './guide-types';
import { kindOf } from './kind';
import type { Known } from './known';

/** A hollow corner between two edges of a piece, and the cut into it, from the cut line to just short of the corner. */
export type Corner = { readonly piece: string; readonly edges: readonly [string, string]; readonly snip: Path };

/** Turned less than this, as the sine, an edge only bends: its allowance gives. */
const LEAST_TURN = 0.35;
/** The cut stops so far before the corner, as a share of its length (common practice, no source: a thread or two). */
const SHORT_OF_CORNER = 0.1;

const turned: readonly Kind[] = ['turn', 'hem', 'closure', 'casing'];

/**
 * The hollow corners at the ends of what is turned in this pass: both allowances lie in the way of each other, and neither can be
 * turned until it is snipped. Left out are those that an earlier pass turned at.
 */
export function snipsOf(seams: readonly Seam[], done: readonly Seam[], known: Known): readonly Corner[] {
  const [now, before] = [seams, done].map((each) =>
    each.filter((seam) => seam.join === 'folded' && turned.includes(kindOf(seam, known))).flatMap(({ first }) => first),
  );
  return known.draft.pieces.flatMap(({ name: piece, edges }) =>
    edges.flatMap((edge, index): Corner[] => {
      const next = edges[(index + 1) % edges.length];
      const snip = next ? snipBetween(edge, next) : null;
      if (!next || !snip) return [];
      const holds = (refs: readonly Ref[] = []) =>
        refs.some((ref) => ref.piece === piece && (ref.edge === edge.name || ref.edge === next.name));
      return holds(now) && !holds(before) ? [{ piece, edges: [edge.name, next.name], snip }] : [];
    }),
  );
}

/** Clockwise as seen, an edge that turns left goes into its piece. */
function snipBetween(edge: Edge, next: Edge): Path | null {
  const [into, out] = [endTangent(edge.path), startTangent(next.path)];
  const left = out.x * into.y - out.y * into.x;
  if (left < LEAST_TURN || edge.allowance === 0 || next.allowance === 0) return null;
  const far = add(scale(outside(into), edge.allowance), scale(outside(out), next.allowance));
  const corner = end(edge.path);
  return polyline([add(corner, far), add(corner, scale(far, SHORT_OF_CORNER))]);
}

/** To the left of the way along an edge. */
const outside = ({ x, y }: Point): Point => point(y, -x);
