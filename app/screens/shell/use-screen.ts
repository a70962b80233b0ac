import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { ScreenProps } from '../shared/screen-props';
import { noteHappening } from '../shared/trouble/happened';
import { ToysScreen } from '../toys/toys';
import type { Found, findScreen, Screen } from './screens';

type Component = ComponentType<ScreenProps>;

/** A screen with all that it takes to show it. */
export type Shown = Omit<Found, 'screen'> & { readonly component: Component };

const home: Shown = { component: ToysScreen, params: {}, key: '' };

/** The table of all other screens, once it was fetched (the first screen does without it), and the screens that were. */
let find: typeof findScreen | undefined;
const components = new Map<Screen, Component>();

/** The screen that an address names, the first screen where it names none; null while it is fetched. */
export function useScreen(parts: readonly string[]): Shown | 'failed' | null {
  const address = parts.join('/');
  const [failed, setFailed] = useState<string>();
  const [, setFetched] = useState<string>();
  const found = address === '' ? null : find?.(parts);
  const component = found && components.get(found.screen);
  useEffect(() => {
    if (found === null || component) return;
    let stale = false;
    fetchScreen(parts).then(
      () => !stale && setFetched(address),
      (error) => {
        noteHappening(error);
        if (!stale) setFailed(address);
      },
    );
    return () => {
      stale = true;
    };
  }, [address]);
  if (found === null) return home;
  if (component) return { ...found, component };
  return failed === address ? 'failed' : null;
}

async function fetchScreen(parts: readonly string[]): Promise<void> {
  find ??= (await import('./screens')).findScreen;
  const screen = find(parts)?.screen;
  if (screen && !components.has(screen)) components.set(screen, await screen.load());
}
