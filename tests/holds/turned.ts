import type { Edge, Piece } from '../../app/drafting/draft-types';
import { angleBetween, curvature, endTangent, startTangent } from '../../app/drafting/geometry';

/** Turned farther than this, an edge has to be nearly straight to lie flat, mm. */
const FAR_MM = 6;
/** Radians from end to end, and the sharpest hollow (mm): drafting, allowances. */
const MOST_TURN = 0.45;
const SHARPEST_HOLLOW_MM = 40;
/** A casing's fullness is drawn in by its elastic. */
const TURNED: readonly string[] = ['hem', 'closure'];

/** Edges that are turned back so far that they cannot lie flat: curved or hollow ones. */
export function turnedTooFar(piece: Piece): string[] {
  return piece.edges
    .filter((edge) => TURNED.includes(edge.role) && edge.allowance > FAR_MM && (turns(edge) || hollow(edge)))
    .map((edge) => `${piece.name}.${edge.name}: a curved ${edge.role} turned by ${edge.allowance} mm`);
}

function turns({ path }: Edge): boolean {
  return angleBetween(startTangent(path), endTangent(path)) > MOST_TURN;
}

/** Clockwise as seen, a hollow curve bends left. */
function hollow({ path }: Edge): boolean {
  return path.some((curve) => [0.05, 0.25, 0.5, 0.75, 0.95].some((t) => curvature(curve, t) < -1 / SHARPEST_HOLLOW_MM));
}
