// What an edge is called and how much is added there, in the allowance itself, where nothing else is drawn.

import type { Say, Unit } from '../../body';
import { isStrip } from '../cloth';
import type { Edge, Piece } from '../draft-types';
import { add, left, type Point, pointAtLength, scale } from '../geometry';
import { edgeName } from '../pieces/edge-name';
import { boxRound, crossesAny } from './crossing';
import { centred } from './flow';
import { type Ink, MM_PER_PT, SMALLEST_PT, type TextWidth, type Words } from './ink';
import { readingTurn } from './words-along';

/** Where along the edge words may stand, as shares of its length, the best first. */
const PLACES = [0.5, 0.35, 0.65, 0.22, 0.78];

/** Kept between words and what crosses the allowance, mm. */
const BESIDE_MM = 1;

/** Small print and its air, as a share of its size: no band narrower than this has words in it. */
const BAND_SHARE = 1.25;

/** Where nothing is added, words stand so far inside the edge, mm. */
const INSIDE = -SMALLEST_PT * MM_PER_PT * 0.8;

type Shown = { readonly piece: Piece; readonly to: (p: Point) => Point; readonly units?: Unit };

export function edgeWords({ piece, to, units }: Shown, ink: readonly Ink[], say: Say, widthOf: TextWidth) {
  if (isStrip(piece)) return [];
  let last: string | undefined;
  return piece.edges.flatMap((edge): readonly Words[] => {
    const text = edgeText(edge, piece, say, units);
    // The two edges of a dart lie face to face: one says it for both.
    if (text === undefined || text === last) return [];
    const words = placed(edge, text);
    last = words.length > 0 ? text : undefined;
    return words;
  });

  function placed(edge: Edge, text: string): readonly Words[] {
    if (edge.role === 'finished') return wordsIn(edge, text, INSIDE, to, ink, widthOf);
    if (edge.allowance < SMALLEST_PT * MM_PER_PT * BAND_SHARE) return [];
    return wordsIn(edge, text, edge.allowance / 2, to, ink, widthOf);
  }
}

/** What an edge is called, and with units what is added there; undefined where it has no name of its own. */
export function edgeText(edge: Edge, piece: Piece, say: Say, units: Unit | undefined): string | undefined {
  if (edge.role === 'finished') return say('edge.finished');
  const known = edge.role === 'fold' ? undefined : edgeName(edge, piece);
  if (!known) return undefined;
  const name = say(`edge.${known}`);
  return units && edge.allowance > 0 ? say('edge.with', { edge: name, length: edge.allowance, unit: units }) : name;
}

function wordsIn(
  { path, length }: Edge,
  text: string,
  out: number,
  to: (p: Point) => Point,
  ink: readonly Ink[],
  widthOf: TextWidth,
): readonly Words[] {
  const half = widthOf(text, SMALLEST_PT, false) / 2;
  for (const share of PLACES) {
    if (Math.min(share, 1 - share) * length < half) continue;
    const { point, tangent } = pointAtLength(path, share * length);
    const middle = to(add(point, scale(left(tangent), out)));
    const turn = readingTurn(to(point), to(add(point, tangent)));
    if (!crossesAny(boxRound(middle, half + BESIDE_MM, SMALLEST_PT, turn), ink, widthOf))
      return [centred(text, middle, SMALLEST_PT, false, widthOf, turn)];
  }
  return [];
}
