import type { ComponentChildren } from 'preact';
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
  return <>{children({ ...watched.value, toy })}</>;
}
