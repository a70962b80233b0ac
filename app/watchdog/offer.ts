import { clearFiles, tryAgain } from './files';
import type { Outcome } from './outcome';
import { saveEverything } from './save';
import { type Spoken, wordsHere } from './words';
import './watchdog.css';

export type Offer = { readonly takeAway: () => void };

/** Shows the page that stands in for the app. Everything in it is text: nothing stored is ever shown as markup. */
export function showOffer(): Offer {
  const look = element('link', { rel: 'stylesheet', href: './watchdog.css' });
  const place = element('div', {});
  document.head.append(look);
  document.body.append(place);
  void wordsHere().then((words) => place.append(page(words)));
  return {
    takeAway: () => {
      look.remove();
      place.remove();
    },
  };
}

function page({ language, say }: Spoken): Element {
  const way = wayIn(say);
  const told = element('p', { role: 'status' });
  return element(
    'main',
    { class: 'watchdog', lang: language, dir: 'auto' },
    element('h1', {}, say('watchdog.title')),
    element('p', {}, say('watchdog.kept')),
    told,
    way('go', say('watchdog.again'), say('watchdog.again-what'), tryAgain, told),
    way('plain', say('watchdog.save'), say('watchdog.save-what'), saveEverything, told),
    way('plain', say('watchdog.clear'), say('watchdog.clear-what'), clearFiles, told),
  );
}

/** A button that does one thing at a time, and under it what that thing is. */
const wayIn =
  (say: Spoken['say']) =>
  (kind: string, name: string, what: string, run: () => Promise<Outcome>, told: Element): Element => {
    const button = element('button', { type: 'button', class: kind }, name);
    button.addEventListener('click', async () => {
      if (button.getAttribute('aria-disabled')) return;
      button.setAttribute('aria-disabled', 'true');
      told.textContent = say('watchdog.working');
      const outcome = await run().catch((): Outcome => 'failed');
      told.textContent = outcome ? say(`watchdog.${outcome}`) : '';
      button.removeAttribute('aria-disabled');
    });
    return element('div', {}, button, element('p', { class: 'soft small' }, what));
  };

function element(name: string, marks: Readonly<Record<string, string>>, ...inside: readonly (Node | string)[]) {
  const made = document.createElement(name);
  for (const [mark, value] of Object.entries(marks)) made.setAttribute(mark, value);
  made.append(...inside);
  return made;
}
