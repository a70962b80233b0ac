import type { ComponentType } from 'preact';
import { ToysScreen } from '../toys/toys';

export type ScreenProps = {
  readonly params: Readonly<Record<string, string>>;
  readonly query: URLSearchParams;
  /** Whether the store was new, known, or found cleared by the browser. */
  readonly found: 'new' | 'known' | 'cleared';
};

/** One row a screen: its address (`:name` stands for anything) and how it is fetched. */
export type Screen = { readonly path: string; readonly load: () => Promise<ComponentType<ScreenProps>> };

const home: Screen = { path: '', load: async () => ToysScreen };

const screens: readonly Screen[] = [
  home,
  { path: 'new', load: async () => (await import('../new-toy/name')).NameScreen },
  { path: 'toy/:toy', load: async () => (await import('../toy/toy')).ToyScreen },
  { path: 'toy/:toy/kind', load: async () => (await import('../new-toy/kind')).KindScreen },
  { path: 'toy/:toy/looks', load: async () => (await import('../new-toy/looks')).LooksScreen },
  { path: 'toy/:toy/make', load: async () => (await import('../garments/garments')).GarmentsScreen },
  { path: 'toy/:toy/:garment/choices', load: async () => (await import('../choices/choices')).ChoicesScreen },
  { path: 'toy/:toy/:garment/marks', load: async () => (await import('../marks/marks')).MarksScreen },
  { path: 'toy/:toy/:garment/measure/:measure', load: async () => (await import('../step/step')).StepScreen },
  { path: 'toy/:toy/:garment/review', load: async () => (await import('../review/review')).ReviewScreen },
  { path: 'toy/:toy/:garment/pattern', load: async () => (await import('../pattern/pattern')).PatternScreen },
  { path: 'toy/:toy/:garment/print', load: async () => (await import('../print/print')).PrintScreen },
  { path: 'settings', load: async () => (await import('../settings/settings')).SettingsScreen },
  { path: 'settings/backup', load: async () => (await import('../settings/backup')).BackupScreen },
  { path: 'settings/about', load: async () => (await import('../settings/about')).AboutScreen },
];

export type Found = {
  readonly screen: Screen;
  readonly params: Readonly<Record<string, string>>;
  readonly key: string;
};

/** The screen at an address; the first screen where there is none. */
export function findScreen(parts: readonly string[]): Found {
  for (const screen of screens) {
    const params = match(screen.path === '' ? [] : screen.path.split('/'), parts);
    if (params) return { screen, params, key: parts.join('/') };
  }
  return { screen: home, params: {}, key: '' };
}

function match(path: readonly string[], parts: readonly string[]): Record<string, string> | null {
  if (path.length !== parts.length) return null;
  const params: Record<string, string> = {};
  for (const [index, name] of path.entries()) {
    const part = parts[index] ?? '';
    if (name.startsWith(':')) params[name.slice(1)] = part;
    else if (name !== part) return null;
  }
  return params;
}
