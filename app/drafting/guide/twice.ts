import type { Ref, Seam } from '../draft-types';
import { after, before, isSewnOn } from './beside';
import type { Kind } from './guide-types';
import { isSelf, kindOf } from './kind';
import type { Known } from './known';
import { meetsFold } from './runs';

/** What is turned at a lower or an upper end goes on across the middle. */
const turnedUp: readonly Kind[] = ['casing', 'hem', 'raw-hem'];

/** Sewn once on the left and once on the right, rather than on over the middle. */
export function bothSides(kind: Kind, seams: readonly Seam[], known: Known): boolean {
  if (kind === 'bag' && seams.every(isSelf)) return false;
  const goesOn = turnedUp.includes(kind) && seams.some((seam) => runsOverMiddle(seam, known));
  return seams.every(
    (seam) => seam.sewn === 2 && [...seam.first, ...seam.second].every((ref) => isTwice(ref, goesOn, known)),
  );
}

/**
 * An edge that the garment has twice: of a piece cut twice, twice that where two are layers or halves that it goes on across, or beside
 * no fold of one cut once.
 */
function isTwice(ref: Ref, goesOn: boolean, known: Known): boolean {
  const { copies, onFold } = known.piece(ref.piece);
  const layered = known.draft.seams.some((seam) => isSelf(seam) && kindOf(seam, known) === 'bag' && isOf(ref, seam));
  return copies / (layered || goesOn ? 2 : 1) > 1 || (onFold && !goesOn && !meetsFold(ref, known));
}

const isOf = ({ piece }: Ref, seam: Seam): boolean => seam.first.some((ref) => ref.piece === piece);

/** A piece is joined to its mirror image, not to itself, beside these edges: what is folded there goes on across. */
const runsOverMiddle = ({ first }: Seam, known: Known): boolean =>
  known.draft.seams.some(
    (each) =>
      isMirrored(each) &&
      kindOf(each, known) !== 'ring' &&
      first.flatMap((ref) => [before(ref, known), after(ref, known)]).some((ref) => isSewnOn(ref, [each])),
  );

/** The same edge, left and right. */
const isMirrored = (seam: Seam): boolean =>
  isSelf(seam) && seam.first.every(({ edge }, index) => seam.second[index]?.edge === edge);
