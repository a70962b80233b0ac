const FAMILY = 'Hemling Round';
const ADDRESS = './letters/hemling-round.woff2';

/** From the cache the letters come in a few of these, ms; a screen never waits longer for them. */
const PATIENCE_MS = 120;

type Saving = { readonly connection?: { readonly saveData?: boolean } };

/**
 * Letters of our own, never waited for and never changed under her eyes. They are fetched with all else that is kept for
 * offline use: the first time they come with the next screen after that, from then on before the first. Who saves data
 * keeps the device's letters.
 */
export async function ownLetters(): Promise<void> {
  if (!('FontFace' in globalThis) || (navigator as Saving).connection?.saveData) return;
  const keeper: ServiceWorkerContainer | undefined = navigator.serviceWorker;
  if (!keeper?.controller) return keeper?.addEventListener('controllerchange', laterOn, { once: true });
  const face = lettersFrom();
  const late = new Promise<'late'>((wake) => setTimeout(() => wake('late'), PATIENCE_MS));
  if ((await Promise.race([face, late])) === 'late') void face.then(withNextScreen);
  else put(await face);
}

const laterOn = () => void lettersFrom().then(withNextScreen);

/** None where they cannot be had: the device has letters too. */
const lettersFrom = (): Promise<FontFace | null> =>
  new FontFace(FAMILY, `url(${new URL(ADDRESS, document.baseURI).href})`, { weight: '400 700' })
    .load()
    .catch(() => null);

function withNextScreen(face: FontFace | null): void {
  addEventListener('hashchange', () => put(face), { once: true });
}

const put = (face: FontFace | null): void => void (face && document.fonts.add(face));
