import { footBar, headBar, Icon, useWords } from '../../parts';
import { useToys } from '../shared/keeping';
import { lazily } from '../shared/lazily';
import { learnAll } from '../shared/learning';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { Trouble } from '../shared/trouble/trouble';
import { Welcome } from './welcome';
import './toys.css';

/** A shelf speaks of clothes and measures, so it waits for all the words. */
const ToyShelf = lazily(async () => (await Promise.all([import('./toy-shelf'), learnAll()]))[0].ToyShelf);

/** The first screen: her toys, or, while there are none, what Hemling is for and a few toys to try. */
export function ToysScreen({ found }: ScreenProps) {
  const { say } = useWords();
  const toys = useToys();
  if (toys.state === 'waiting') return <main class="loading" aria-busy="true" />;
  if (toys.state === 'failed')
    return <Trouble code={toys.error.code} act={{ words: 'screen.trouble.reload', run: () => location.reload() }} />;
  return (
    <div class="page">
      <header class="header" ref={headBar}>
        <p class="brand">Hemling</p>
        <a class="quiet round" href={to('settings')} aria-label={say('screen.settings.title')}>
          <Icon name="settings" />
        </a>
      </header>
      {toys.value.toys.length + toys.value.newer.length === 0 ? (
        <Welcome cleared={found === 'cleared'} />
      ) : (
        <ToyShelf {...toys.value} />
      )}
      <footer class="page-acts" ref={footBar}>
        <a class="plain" href={to('card')}>
          {say('screen.toys.card')}
        </a>
        <a class="go" href={to('new')}>
          {say('screen.toys.measure')}
        </a>
      </footer>
    </div>
  );
}
