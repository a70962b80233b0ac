import { useEffect } from 'preact/hooks';
import type { Liking } from '../shared/defaults';

/** What shows on every screen: hand and figures; light, dark, or as the device is set, the browser's own bars in the paper's colour. */
export function useLooks({ theme, hand, figures }: Pick<Liking, 'theme' | 'hand' | 'figures'>): void {
  useEffect(() => {
    Object.assign(document.documentElement.dataset, { hand, figures });
  }, [hand, figures]);
  useEffect(() => {
    const root = document.documentElement;
    if (theme === 'auto') delete root.dataset.theme;
    else root.dataset.theme = theme;
    const paint = () => {
      const paper = getComputedStyle(document.body).backgroundColor;
      for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')) meta.content = paper;
    };
    paint();
    const dark = matchMedia('(prefers-color-scheme: dark)');
    dark.addEventListener('change', paint);
    return () => dark.removeEventListener('change', paint);
  }, [theme]);
}
