import type { Traits } from '../../../body';
import type { Instead, SeamRow, Unsuited } from '../../rows/rows';
import { STEEPEST_TURNED } from './leg-names';
import { isKnob, knobToWaist, noTail } from './leg-tail';
import { isSewn, isTube, opensToTail, type PantsNames, slitsTail } from './pants-names';
import { tubeSlits } from './pants-tube';

/** Through a slit in the fold, faced; or from the waist down: the two halves are sewn together below the tail, and close above it. */
export const pantsTailSeams: readonly SeamRow<PantsNames>[] = [
  {
    name: 'tail-slit',
    sewn: 1,
    kind: 'laid',
    first: [{ piece: 'pants', edge: 'slit', times: 2 }],
    second: [{ piece: 'tail-facing', edge: 'slit', times: 2 }],
    when: slitsTail,
  },
  {
    name: 'pants-middle',
    sewn: 1,
    first: [{ piece: 'pants', edge: 'centre' }],
    second: [{ piece: 'pants', edge: 'centre' }],
    when: opensToTail,
  },
  {
    name: 'tail-closure',
    sewn: 2,
    kind: 'folded',
    first: [{ piece: 'pants', edge: 'tail-closure' }],
    second: [],
    when: opensToTail,
  },
  {
    name: 'tail',
    sewn: 2,
    kind: 'folded',
    first: [
      { piece: 'pants', edge: 'tail-end' },
      { piece: 'pants', edge: 'tail' },
    ],
    second: [],
    when: opensToTail,
  },
];

const tailless = ({ tail }: Traits) => !tail;

export const pantsTailUnsuited: readonly Unsuited<PantsNames>[] = noTail(tailless);

export const pantsTailToWaist: Instead<PantsNames> = {
  ...knobToWaist,
  when: (look) => (slitsTail(look.choices) || tubeSlits(look.choices)) && isKnob(look),
};

/** A waist that comes down and rises too steeply for it is not turned. */
export const pantsWaistFaced: Instead<PantsNames> = {
  choice: 'waist',
  from: 'turned',
  to: 'faced',
  code: 'waist-faced',
  check: ['crotch-length', 'body-rise'],
  onlyAuto: true,
  when: ({ sizes: { pantsRaised, pantsFront, legRaised, legHalfHip }, choices }) =>
    isTube(choices)
      ? legRaised > STEEPEST_TURNED * legHalfHip
      : isSewn(choices) && pantsRaised > STEEPEST_TURNED * pantsFront,
};
