import { useLayoutEffect } from 'preact/hooks';

/** A screen just opened begins at its top, wherever the one before was scrolled to; one gone back to is left as it was. */
export function useFreshScreens(path: string): void {
  useLayoutEffect(() => {
    if (history.state !== null) return;
    history.replaceState({ seen: true }, '');
    scrollTo(0, 0);
  }, [path]);
}
