import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Unit } from '../../body';
import { type Speech, useWords, WordsContext } from '../../parts';
import type { Toy, ToyWatched } from '../../storage';
import { useToy } from './keeping';
import { Trouble } from './trouble/trouble';

export type Known = Omit<ToyWatched, 'toy' | 'newer'> & { readonly toy: Toy };

type WithToyProps = { readonly toyId: string; readonly children: (known: Known) => ComponentChildren };

/** Shows a screen about one toy once it is read; says so where it is gone or cannot be read. */
export function WithToy({ toyId, children }: WithToyProps) {
  const watched = useToy(toyId);
  if (watched.state === 'waiting') return <main class="loading" aria-busy="true" />;
  if (watched.state === 'failed')
    return <Trouble code={watched.error.code} act={{ words: 'screen.trouble.reload', run: () => location.reload() }} />;
  const { toy, newer } = watched.value;
  if (newer)
    return <Trouble code="toy-newer" act={{ words: 'screen.trouble.home', run: () => location.replace('#/') }} />;
  if (!toy)
    return <Trouble code="toy-gone" act={{ words: 'screen.trouble.home', run: () => location.replace('#/') }} />;
  return <InItsUnit unit={toy.unit}>{children({ ...watched.value, toy })}</InItsUnit>;
}

/** What is said of a toy that has a unit of its own is said in that. */
function InItsUnit({ unit, children }: { readonly unit: Unit | undefined; readonly children: ComponentChildren }) {
  const words = useWords();
  const own = useMemo((): Speech => {
    if (!unit) return words;
    return { say: (code, values) => words.say(code, { unit, ...values }), hand: { ...words.hand, unit } };
  }, [words, unit]);
  return <WordsContext.Provider value={own}>{children}</WordsContext.Provider>;
}
