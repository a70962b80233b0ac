import { TableScene, useHeading, useWords } from '../../parts';
import { lazily } from '../shared/lazily';
import { learnAll } from '../shared/learning';
import { to } from '../shared/route';

/** Looked for once the screen is there: a copy is seldom needed. */
const CopyOffer = lazily(async () => (await Promise.all([import('./copy-offer'), learnAll()]))[0].CopyOffer);

/** Drawn after the words are there: the figures weigh as much as the whole first screen. */
const Borrow = lazily(async () => (await import('./borrow')).Borrow);

/** What stands on the first screen before there are toys. */
export function Welcome({ cleared }: { readonly cleared: boolean }) {
  const { say } = useWords();
  const heading = useHeading(say('screen.toys.title'));
  return (
    <main class="page-main welcome">
      {cleared && <Cleared />}
      <CopyOffer />
      <TableScene />
      <h1 tabIndex={-1} ref={heading}>
        {say('screen.welcome.title')}
      </h1>
      <p>{say('screen.welcome.what')}</p>
      <h2 class="welcome-try">{say('screen.welcome.try')}</h2>
      <ul class="welcome-toys">
        <Borrow />
      </ul>
    </main>
  );
}

/** The browser cleared what was kept: said once, with the way to bring a backup back. */
function Cleared() {
  const { say } = useWords();
  return (
    <aside class="slip warn">
      <h2>{say('screen.cleared.title')}</h2>
      <p>{say('screen.cleared.what')}</p>
      <a class="plain" href={to('settings', 'backup')}>
        {say('screen.cleared.backup')}
      </a>
    </aside>
  );
}
