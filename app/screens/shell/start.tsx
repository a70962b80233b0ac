import { type ComponentChildren, render } from 'preact';
import { useErrorBoundary } from 'preact/hooks';
import { openStore, type Settings, type StoreState, settings } from '../../storage';
import { createLearner } from '../../words';
import { listenForArrivals } from '../shared/arrivals';
import { likingFrom } from '../shared/defaults';
import { learnFrom } from '../shared/learning';
import { listenForTrouble, noteHappening } from '../shared/trouble/happened';
import { App } from './app';
import { ownLetters } from './letters';
import '../../parts/base.css';
import '../../parts/buttons.css';
import '../../parts/slip.css';

type LastResortProps = { readonly plainly: ComponentChildren; readonly children: ComponentChildren };

/** Should what the store says stop the whole app, it is shown as if nothing were set, so that the settings can be reached. */
function LastResort({ plainly, children }: LastResortProps) {
  const [broken] = useErrorBoundary(noteHappening);
  return <>{broken ? plainly : children}</>;
}

/** Opens the store, fetches the words, and shows the screen that the address names. */
export async function start(place: Element): Promise<void> {
  listenForTrouble();
  listenForArrivals();
  const devices = navigator.languages;
  const guessed = likingFrom({}, devices).locale;
  const [[store, kept], guessedWords] = await Promise.all([openWithSettings(), createLearner(guessed), ownLetters()]);
  const { locale } = likingFrom(kept, devices);
  const words = locale === guessed ? guessedWords : await createLearner(locale);
  learnFrom(words.learn);
  place.textContent = '';
  const app = { store, words: { say: words.say, locale } };
  render(
    <LastResort plainly={<App {...app} settings={{}} plain />}>{<App {...app} settings={kept} />}</LastResort>,
    place,
  );
}

async function openWithSettings(): Promise<readonly [StoreState, Settings]> {
  const store = await openStore();
  return [store, store.ok ? await settings().catch(() => ({})) : {}];
}
