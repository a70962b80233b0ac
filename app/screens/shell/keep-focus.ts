const CAN_HOLD = 'a[href], button:not(:disabled), input:not(:disabled), select, textarea, summary, [tabindex="0"]';

/** A screen that was left takes the focus to its successor's title itself, as soon as it is drawn; ms. */
const OWN_TIME_MS = 150;

/**
 * Where what had the focus is taken away (a doubt that was kept, a row that was removed), the next control of the same
 * place takes it, else the title of the screen: it never falls to nowhere. Gives back what stops this.
 */
export function keepFocus(): () => void {
  let path: readonly Element[] = [];
  let waiting = 0;
  const remember = (event: FocusEvent) => {
    path = event.composedPath().filter((each) => each instanceof Element);
  };
  const lost = () => document.activeElement === document.body && path[0] !== undefined && !path[0].isConnected;
  const mend = () => {
    if (!lost()) return;
    const place = path.find((each) => each.isConnected && !each.contains(document.querySelector('h1')));
    const next = place?.querySelector<HTMLElement>(CAN_HOLD) ?? document.querySelector<HTMLElement>('h1');
    next?.focus({ preventScroll: true });
  };
  const watch = new MutationObserver(() => {
    clearTimeout(waiting);
    if (lost()) waiting = window.setTimeout(mend, OWN_TIME_MS);
  });
  document.addEventListener('focusin', remember);
  watch.observe(document.body, { childList: true, subtree: true });
  return () => {
    document.removeEventListener('focusin', remember);
    watch.disconnect();
    clearTimeout(waiting);
  };
}
