import { useEffect, useState } from 'preact/hooks';

/**
 * Keeps the screen on while this is shown: the maker's hands are on the tape. The browser lets go whenever the tab is
 * hidden, so it is asked again on return. False where it cannot be done (no such browser, or power saving), for the
 * screen to say so; null until it is known.
 */
export function useAwake(): boolean | null {
  const [awake, setAwake] = useState<boolean | null>(null);
  useEffect(() => {
    let lock: WakeLockSentinel | undefined;
    let left = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible') return;
      const given = await askForLock();
      if (left) return void given?.release();
      lock = given;
      setAwake(given !== undefined);
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      left = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, []);
  return awake;
}

async function askForLock(): Promise<WakeLockSentinel | undefined> {
  // Missing in older browsers and outside secure contexts, whatever the types say.
  const wakeLock: WakeLock | undefined = navigator.wakeLock;
  return wakeLock?.request('screen').catch(() => undefined);
}
