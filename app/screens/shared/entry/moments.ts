import { useEffect } from 'preact/hooks';

/** A pause in typing this long counts as a number entered, ms: long enough to find the next key. */
const PAUSE_MS = 700;

/** Calls `then` once the text has stayed the same for a while. */
export function usePause(text: string, then: () => void): void {
  useEffect(() => {
    const timer = setTimeout(then, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
}

/** Calls `keep` on the way out: to another screen, another app, or when the device goes to sleep. */
export function useLeaving(keep: () => Promise<unknown>): void {
  useEffect(() => {
    const hidden = () => {
      if (document.visibilityState === 'hidden') void keep();
    };
    document.addEventListener('visibilitychange', hidden);
    addEventListener('pagehide', hidden);
    return () => {
      document.removeEventListener('visibilitychange', hidden);
      removeEventListener('pagehide', hidden);
      void keep();
    };
  }, []);
}
