import type { Draft } from '../../app/drafting/draft-types';
import { brokenFit } from './fit';
import { strayLines } from './lines';
import { foldedOverOpenings } from './openings';
import { brokenRings } from './rings';
import { brokenSeams } from './seams';

/** Everything that must hold of any draft, whatever the toy: one line for each thing that does not. */
export function brokenIn(draft: Draft): string[] {
  return [
    ...draft.pieces.flatMap(brokenRings),
    ...draft.pieces.flatMap(strayLines),
    ...brokenSeams(draft),
    ...foldedOverOpenings(draft),
    ...brokenFit(draft),
  ];
}
