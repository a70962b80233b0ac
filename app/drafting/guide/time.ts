import type { Guide, GuideStep } from './guide-types';

export const ways = ['machine', 'hand'] as const;
export type Way = (typeof ways)[number];

/** Minutes for 100 mm of stitches, and to lay, pin and press at each step; to cut out a piece. Common practice, no source. */
const STITCHING = { machine: 0.5, hand: 4 } as const;
const AT_EACH_STEP = { machine: 4, hand: 3 } as const;
const CUTTING = 4;
const QUARTER = 15;

/** Cut with scissors only: there is no step, or each leaves an edge as it is cut. */
export const sewsNothing = ({ steps }: Pick<Guide, 'steps'>): boolean =>
  steps.every(({ kind, notes }) => kind === 'raw-hem' && notes.every(({ code }) => code !== 'raw-frays'));

/** About how long it takes, in whole quarters of an hour. */
export function timeOf({ cut, steps }: Pick<Guide, 'cut' | 'steps'>, way: Way): number {
  const cutting = cut.reduce((sum, { copies }) => sum + copies * CUTTING, 0);
  const sewing = steps.reduce((sum, step) => sum + AT_EACH_STEP[way] + stitching(step, way), 0);
  return Math.max(QUARTER, Math.round((cutting + sewing) / QUARTER) * QUARTER);
}

const stitching = ({ length }: GuideStep, way: Way) => (length / 100) * STITCHING[way];
