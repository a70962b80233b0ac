import type { Draft } from '../../app/drafting/draft-types';
import { clothUnheeded } from './cloth';
import { brokenFit } from './fit';
import { sewnRound } from './flat';
import { gluedFaults } from './glued';
import { bentOnFinished, strayLines } from './lines';
import { foldedOverOpenings } from './openings';
import { brokenRings } from './rings';
import { brokenSeams } from './seams';
import { turnedTooFar } from './turned';

/**
 * Allowances by role, mm, on a toy of the usual size, on one under 220 mm round the chest and on one of 450 or more (drafting:
 * ¼ in seams, 20 folded back behind a closure, 25 where its tape is 20 wide); only hems may take less. What is bound or left as
 * cut has none.
 */
const ALLOWANCES: Readonly<Record<string, readonly [usual: number, small: number, large: number]>> = {
  seam: [6, 5, 6],
  neckline: [6, 5, 6],
  opening: [6, 5, 6],
  closure: [20, 10, 25],
  edge: [0, 0, 0],
  fold: [0, 0, 0],
};
const SMALL_UNDER_MM = 220;
const LARGE_FROM_MM = 450;

/** Every edge has the allowance that was ordered, or its role's; on one toy all go by one size. */
function lostAllowances(draft: Draft): string[] {
  const chest = draft.fit.find(({ place }) => place === 'chest');
  const sizes = chest === undefined ? [0, 1, 2] : [chest.from === 'estimate' ? 0 : sizeOf(chest.body)];
  const off = sizes.map((size) => offBy(draft, (role) => ALLOWANCES[role]?.[size]));
  return off.find((faults) => faults.length === 0) ?? off[0] ?? [];
}

const sizeOf = (chest: number) => (chest < SMALL_UNDER_MM ? 1 : chest < LARGE_FROM_MM ? 0 : 2);

function offBy({ pieces, order }: Draft, usual: (role: string) => number | undefined): string[] {
  return pieces.flatMap((piece) =>
    piece.edges
      .filter((edge) => {
        const due = order.allowances[edge.role] ?? usual(edge.role);
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
    ...draft.pieces.flatMap(bentOnFinished),
    ...draft.pieces.flatMap(turnedTooFar),
    ...brokenSeams(draft),
    ...foldedOverOpenings(draft),
    ...sewnRound(draft),
    ...clothUnheeded(draft),
    ...brokenFit(draft),
    ...gluedFaults(draft).map(({ code, where, told }) => `glued: ${code} ${where}: ${told}`),
  ];
}
