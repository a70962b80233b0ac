import type { Answer, Stuff } from '../../drafting/cloth';

/** Whether a longer look may find anything: a lay where there is none yet, or for several pieces one that takes less of a width. */
export function mayImprove(answer: Answer, stuff: Stuff): boolean {
  if (answer.kind !== 'fits') return answer.kind === 'searching';
  return 'width' in stuff && answer.laid.length > 1;
}
