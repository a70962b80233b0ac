import type { Known } from '../../body';
import { distanceOn, type PhotoFault, seePlane } from '../../measuring/photo';
import { CARD_MARKS, type Marks, mostMissed, nextWaiting, type Size } from '../shared/photo/marks';

/** What the marks say: nothing yet, why they cannot be right, or the distance. */
export type Verdict =
  | { readonly is: 'waiting'; readonly next: number }
  | { readonly is: 'wrong'; readonly code: PhotoFault | 'photo.no-distance' }
  | { readonly is: 'seen'; readonly known: Known };

/** Where the two ends of what is measured wait, after the card's corners. */
export const ENDS_WAIT_AT = [
  [0.4, 0.5],
  [0.6, 0.5],
] as const;

/** Reads the distance off the marks: four corners of the card, then the two ends of what is measured. */
export function verdictOf(marks: Marks, size: Size): Verdict {
  const waiting = nextWaiting(marks);
  if (waiting !== null && waiting < CARD_MARKS) return { is: 'waiting', next: waiting };
  const plane = seePlane(
    marks.slice(0, CARD_MARKS).map(({ spot }) => spot),
    size,
    mostMissed(marks),
  );
  if (!plane.ok) return { is: 'wrong', code: plane.code };
  if (waiting !== null) return { is: 'waiting', next: waiting };
  const [one, other] = marks.slice(CARD_MARKS);
  const known = one && other && distanceOn(plane, one.spot, other.spot);
  return known && isLength(known) ? { is: 'seen', known } : { is: 'wrong', code: 'photo.no-distance' };
}

/** What the store takes for a length, mm; a give as large as the length says nothing. */
const isLength = ({ value, give }: Known) => value >= 1 && value <= 3000 && give < value;
