// What an edge is called and how much is added there, in the allowance itself, where nothing else is drawn.

import type { Say, Unit } from '../../body';
import type { Edge, Piece } from '../draft-types';
import { add, left, type Point, pointAtLength, scale } from '../geometry';
import { boxRound, crossesAny } from './crossing';
import { centred } from './flow';
import { type Ink, MM_PER_PT, SMALLEST_PT, type TextWidth, type Words } from './ink';
import { readingTurn } from './words-along';

/** Edges that a beginner asks for by name. */
const named = [
  'neckline',
  'shoulder',
  'armhole',
  'side',
  'hem',
  'cuff',
  'face',
  'crown',
  'neck',
  'nape',
  'front-raglan',
  'back-raglan',
  'front-cap',
  'back-cap',
  'front-underarm',
  'back-underarm',
] as const;

/** Where along the edge words may stand, as shares of its length, the best first. */
const PLACES = [0.5, 0.35, 0.65, 0.22, 0.78];

/** Small print and its air, as a share of its size: no band narrower than this has words in it. */
const BAND_SHARE = 1.25;

type Shown = { readonly piece: Piece; readonly to: (p: Point) => Point; readonly units?: Unit };

export function edgeWords({ piece, to, units }: Shown, ink: readonly Ink[], say: Say, widthOf: TextWidth) {
  return piece.edges.flatMap((edge): readonly Words[] => {
    const known = edge.role === 'closure' || (named as readonly string[]).includes(edge.name);
    if (!known || edge.role === 'fold' || edge.allowance < SMALLEST_PT * MM_PER_PT * BAND_SHARE) return [];
    const name = say(edge.role === 'closure' ? 'edge.closure' : `edge.${edge.name}`);
    const text = units ? say('edge.with', { edge: name, length: edge.allowance, unit: units }) : name;
    return wordsIn(edge, text, to, ink, widthOf);
  });
}

function wordsIn(
  { path, length, allowance }: Edge,
  text: string,
  to: (p: Point) => Point,
  ink: readonly Ink[],
  widthOf: TextWidth,
): readonly Words[] {
  const half = widthOf(text, SMALLEST_PT, false) / 2;
  for (const share of PLACES) {
    if (Math.min(share, 1 - share) * length < half) continue;
    const { point, tangent } = pointAtLength(path, share * length);
    const middle = to(add(point, scale(left(tangent), allowance / 2)));
    const turn = readingTurn(to(point), to(add(point, tangent)));
    if (!crossesAny(boxRound(middle, half, SMALLEST_PT, turn), ink, widthOf))
      return [centred(text, middle, SMALLEST_PT, false, widthOf, turn)];
  }
  return [];
}
