import type { Mm } from '../../body';
import type { Role } from '../draft-types';
import { angleBetween, curvature, endTangent, type Path, startTangent } from '../geometry';

/** A hem that curves more than this, radians from end to end, or hollows more sharply than this radius, does not lie flat when turned far. */
const CURVED_HEM = 0.45;
const SHARPEST_HOLLOW_MM = 40;
const MOST_CURVED_HEM_MM = 6;
/** Where along each curve it is asked how hollow it is. */
const HOLLOW_AT = [0.02, 0.05, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 0.95, 0.98] as const;

/** Allowance of one edge: its role's, less where a curved hem would not lie flat or a piece is too small for a wide one. */
export function edgeAllowance(role: Role, path: Path, allowances: Readonly<Record<Role, Mm>>, narrow?: true): Mm {
  const full = allowances[role];
  const short = role === 'hem' && (narrow || turns(path) > CURVED_HEM || hollow(path));
  return short ? Math.min(full, MOST_CURVED_HEM_MM) : full;
}

function turns(path: Path): number {
  return angleBetween(startTangent(path), endTangent(path));
}

/** Clockwise as seen, a hollow curve bends left: negative curvature. */
function hollow(path: Path): boolean {
  return path.some((curve) => HOLLOW_AT.some((t) => curvature(curve, t) < -1 / SHARPEST_HOLLOW_MM));
}
