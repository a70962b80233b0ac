import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

type Size = { readonly width: number; readonly height: number };

/** How large an element is drawn, px, now and whenever that changes; `first` until it is there. */
export function useSize<E extends Element>(first: Size): readonly [RefObject<E | null>, Size] {
  const element = useRef<E>(null);
  const [size, setSize] = useState(first);
  useLayoutEffect(() => {
    const here = element.current;
    if (!here) return;
    const look = () => {
      const { width, height } = here.getBoundingClientRect();
      if (width > 0 && height > 0)
        setSize((last) => (last.width === width && last.height === height ? last : { width, height }));
    };
    look();
    const watch = new ResizeObserver(look);
    watch.observe(here);
    return () => watch.disconnect();
  }, []);
  return [element, size];
}
