import type { Draft } from '../../app/drafting/draft-types';
import { clothUnheeded } from './cloth';
import { brokenFit } from './fit';
import { gluedFaults } from './glued';
import { isKnown } from './glued/to-mend';
import { strayLines } from './lines';
import { foldedOverOpenings } from './openings';
import { brokenRings } from './rings';
import { brokenSeams } from './seams';
import { turnedTooFar } from './turned';

/** Allowances by role, mm (drafting: ¼ in seams and necklines, 20 folded back behind a closure); only hems may take less. */
const ALLOWANCES: Readonly<Record<string, number>> = {
  seam: 6,
  neckline: 6,
  opening: 6,
  closure: 20,
  edge: 0,
  fold: 0,
};

/** Every edge has the allowance that was ordered, or its role's. */
function lostAllowances(draft: Draft): string[] {
  return draft.pieces.flatMap((piece) =>
    piece.edges
      .filter((edge) => {
        const due = draft.order.allowances[edge.role] ?? ALLOWANCES[edge.role];
        return due !== undefined && Math.abs(edge.allowance - due) > 1e-9;
      })
      .map((edge) => `${piece.name}.${edge.name}: a ${edge.role} with ${edge.allowance} mm`),
  );
}

/** Everything that must hold of any draft, whatever the toy: one line for each thing that does not. */
export function brokenIn(draft: Draft): string[] {
  return [
    ...draft.pieces.flatMap(brokenRings),
    ...lostAllowances(draft),
    ...draft.pieces.flatMap(strayLines),
    ...draft.pieces.flatMap(turnedTooFar),
    ...brokenSeams(draft),
    ...foldedOverOpenings(draft),
    ...clothUnheeded(draft),
    ...brokenFit(draft),
    ...gluedFaults(draft)
      .filter((fault) => !isKnown(fault, draft))
      .map(({ code, where, told }) => `glued: ${code} ${where}: ${told}`),
  ];
}
