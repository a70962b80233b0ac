// A notch as it is drawn and snipped.

import type { Mm } from '../../body';
import type { Edge, Notch, Piece } from '../draft-types';
import { add, left, line, type Path, pointAtLength, scale } from '../geometry';

/** Length of a notch where there is no allowance to cross, mm; then it lies inside. */
const INNER_NOTCH_MM = 4;

/** Between the two ticks of a back notch, mm. */
const TICKS_APART_MM = 2.5;

/** Every tick of a notch: from the seam line out to the cut line, where scissors snip. */
export function ticks(piece: Piece, notch: Notch): readonly Path[] {
  const edge = piece.edges.find((each) => each.name === notch.edge);
  if (!edge) return [];
  const offsets = notch.ticks === 1 ? [0] : [-TICKS_APART_MM / 2, TICKS_APART_MM / 2];
  return offsets.map((offset) => tick(edge, notch.at + offset));
}

function tick({ path, allowance }: Edge, at: Mm): Path {
  const { point, tangent } = pointAtLength(path, at);
  const outward = left(tangent);
  return [line(point, add(point, scale(outward, allowance > 0 ? allowance : -INNER_NOTCH_MM)))];
}
