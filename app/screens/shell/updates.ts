import { useEffect, useState } from 'preact/hooks';
import { useWords } from '../../parts';
import { useNotice } from '../shared/trouble/notice';

type Waiting = { readonly takeOver: () => void };

let waiting: Waiting | undefined;
const listeners = new Set<() => void>();

/** A newer version of the app waits; the maker is asked at the next pause. */
export function offerUpdate(found: Waiting): void {
  waiting = found;
  for (const tell of listeners) tell();
}

/** Asks, on any screen where nothing is being entered, whether the newer version may take over. She stays where she is. */
export function useUpdateOffer(screen: string): void {
  const { say } = useWords();
  const notice = useNotice();
  const [found, setFound] = useState(waiting);
  useEffect(() => {
    const follow = () => setFound(waiting);
    listeners.add(follow);
    return () => void listeners.delete(follow);
  }, []);
  useEffect(() => {
    if (!found || screen.includes('/measure/')) return;
    notice({ words: say('screen.update.waiting'), act: { words: say('screen.update.use'), run: found.takeOver } });
  }, [found, screen]);
}
