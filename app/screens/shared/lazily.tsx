import type { ComponentType, FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { noteHappening } from './trouble/happened';

/**
 * A part of a screen that is fetched after the screen is shown: a picture the words can do without for a moment.
 * Nothing stands in its place until then, so whoever uses it keeps the room free.
 */
export function lazily<P extends object>(load: () => Promise<ComponentType<P>>): FunctionComponent<P> {
  let loaded: ComponentType<P> | undefined;
  return function Lazily(props: P) {
    const [Part, setPart] = useState<ComponentType<P> | undefined>(() => loaded);
    useEffect(() => {
      if (Part) return;
      load().then((part) => {
        loaded = part;
        setPart(() => part);
      }, noteHappening);
    }, []);
    return Part ? <Part {...props} /> : null;
  };
}
