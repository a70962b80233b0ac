import { render } from 'preact';
import { openStore, type Settings, type StoreState, settings } from '../../storage';
import { createLearner } from '../../words';
import { listenForArrivals } from '../shared/arrivals';
import { likingFrom } from '../shared/defaults';
import { learnFrom } from '../shared/learning';
import { listenForTrouble } from '../shared/trouble/happened';
import { App } from './app';
import '../../parts/base.css';
import '../../parts/buttons.css';
import '../../parts/slip.css';

/** Opens the store, fetches the words, and shows the screen that the address names. */
export async function start(place: Element): Promise<void> {
  listenForTrouble();
  listenForArrivals();
  const devices = navigator.languages;
  const guessed = likingFrom({}, devices).locale;
  const [[store, kept], guessedWords] = await Promise.all([openWithSettings(), createLearner(guessed)]);
  const { locale } = likingFrom(kept, devices);
  const words = locale === guessed ? guessedWords : await createLearner(locale);
  learnFrom(words.learn);
  place.textContent = '';
  render(<App store={store} settings={kept} words={{ say: words.say, locale }} />, place);
}

async function openWithSettings(): Promise<readonly [StoreState, Settings]> {
  const store = await openStore();
  return [store, store.ok ? await settings().catch(() => ({})) : {}];
}
