import { useEffect } from 'preact/hooks';

/** A second tap so soon after the screen changed was meant for the screen before, ms. */
const TOO_SOON_MS = 400;
const MARK = 'just-changed';

let timer: ReturnType<typeof setTimeout> | undefined;

/** For a moment no tap counts but on the number keys (see `page.css`): two quick ones would run through a whole screen. */
export function passOverTaps(): void {
  clearTimeout(timer);
  document.documentElement.classList.add(MARK);
  timer = setTimeout(() => document.documentElement.classList.remove(MARK), TOO_SOON_MS);
}

/** Passes over second taps whenever the address changes. */
export function usePassingOverTaps(): void {
  useEffect(() => {
    addEventListener('hashchange', passOverTaps);
    return () => removeEventListener('hashchange', passOverTaps);
  }, []);
}
