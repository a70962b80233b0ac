import type { ComponentType } from 'preact';
import { learnAll } from '../shared/learning';
import type { ScreenProps } from '../shared/screen-props';

/** One row a screen but the first: its address (`:name` stands for anything) and how it is fetched. */
export type Screen = { readonly path: string; readonly load: () => Promise<ComponentType<ScreenProps>> };

type Component = ComponentType<ScreenProps>;

/** A screen that is fetched when it is first shown, together with all the words. */
const later = (path: string, load: () => Promise<Component>): Screen => ({
  path,
  load: async () => (await Promise.all([load(), learnAll()]))[0],
});

const screens: readonly Screen[] = [
  later('new', async () => (await import('../new-toy/name')).NameScreen),
  later('toy/:toy', async () => (await import('../toy/toy')).ToyScreen),
  later('toy/:toy/kind', async () => (await import('../new-toy/kind')).KindScreen),
  later('toy/:toy/looks', async () => (await import('../new-toy/looks')).LooksScreen),
  later('toy/:toy/make', async () => (await import('../garments/garments')).GarmentsScreen),
  later('toy/:toy/:garment/choices', async () => (await import('../choices/choices')).ChoicesScreen),
  later('toy/:toy/:garment/marks', async () => (await import('../marks/marks')).MarksScreen),
  later('toy/:toy/:garment/steps', async () => (await import('../steps')).StepsScreen),
  later('toy/:toy/:garment/typed', async () => (await import('../steps')).TypedScreen),
  later('toy/:toy/:garment/measure/:measure', async () => (await import('../step/step')).StepScreen),
  later('toy/:toy/:garment/measure/:measure/photo', async () => (await import('../photo/photo')).PhotoScreen),
  later('toy/:toy/:garment/wishes', async () => (await import('../wishes/wishes')).WishesScreen),
  later('toy/:toy/:garment/review', async () => (await import('../review/review')).ReviewScreen),
  later('toy/:toy/:garment/pattern', async () => (await import('../pattern/pattern')).PatternScreen),
  later('toy/:toy/:garment/cloth', async () => (await import('../cloth/cloth')).ClothScreen),
  later('toy/:toy/:garment/print', async () => (await import('../print/print')).PrintScreen),
  later('toy/:toy/:garment/sew', async () => (await import('../sew/sew')).SewScreen),
  later('toy/:toy/:garment/sew/:step', async () => (await import('../sew/step-screen')).SewStepScreen),
  later('toy/:toy/:garment/tried', async () => (await import('../tried/tried')).TriedScreen),
  later('toy/:toy/outfit', async () => (await import('../outfit/choose')).ChooseOutfitScreen),
  later('toy/:toy/:garment/outfit', async () => (await import('../outfit/outfit')).OutfitScreen),
  later('toy/:toy/:garment/kept', async () => (await import('../kept/kept')).KeptScreen),
  later('toy/:toy/:garment/again', async () => (await import('../again/again')).AgainScreen),
  later('toy/:toy/:garment/fits', async () => (await import('../fits/fits')).FitsScreen),
  later('toy/:toy/:garment/seam', async () => (await import('../sew/seam-screen')).SeamScreen),
  later('toy/:toy/:garment/pencil', async () => (await import('../pencil/pencil')).PencilScreen),
  later('toy/:toy/:garment/true-size', async () => (await import('../true-size/true-size')).TrueSizeScreen),
  later('toy/:toy/share', async () => (await import('../share/share')).ShareScreen),
  later('card', async () => (await import('../incoming/incoming')).IncomingScreen),
  later('card/scan', async () => (await import('../incoming/scan')).ScanScreen),
  later('settings', async () => (await import('../settings/settings')).SettingsScreen),
  later('settings/backup', async () => (await import('../settings/backup')).BackupScreen),
  later('settings/about', async () => (await import('../settings/about')).AboutScreen),
];

export type Found = {
  readonly screen: Screen;
  readonly params: Readonly<Record<string, string>>;
  readonly key: string;
};

/** The screen at an address; null where there is none. */
export function findScreen(parts: readonly string[]): Found | null {
  for (const screen of screens) {
    const params = match(screen.path.split('/'), parts);
    if (params) return { screen, params, key: parts.join('/') };
  }
  return null;
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
