import { useEffect } from 'preact/hooks';
import { useWords } from '../../parts';
import { useNotice } from '../shared/trouble/notice';

/** After so long at the table a pause is offered, ms. */
const SITTING = 15 * 60_000;

let since: number | null = null;

/** Says, between two steps and never while one is sewn, that eyes and hands may rest. */
export function usePause(): void {
  const { say } = useWords();
  const notice = useNotice();
  useEffect(() => {
    const now = Date.now();
    since ??= now;
    if (now - since < SITTING) return;
    since = now;
    notice({ words: say('screen.sew.pause') });
  }, []);
}
