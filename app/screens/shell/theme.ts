import { useEffect } from 'preact/hooks';
import type { Theme } from '../shared/defaults';

/** Light, dark, or as the device is set; the browser's own bars take the paper's colour. */
export function useTheme(theme: Theme): void {
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
