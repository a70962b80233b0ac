import { bodyFrom, demoCards } from '../../measuring';
import { Portrait, TableScene, useHeading, useWords } from '../../parts';
import { addCard } from '../../storage';
import { go, to } from '../route';
import { useAttempt } from '../shell/attempt';

const SHOWN = 4;

/** What stands on the first screen before there are toys. */
export function Welcome({ cleared }: { readonly cleared: boolean }) {
  const { say } = useWords();
  const attempt = useAttempt();
  const heading = useHeading(say('screen.toys.title'));
  const take = (card: (typeof demoCards)[number]) =>
    attempt(async () => {
      const toy = await addCard(card);
      go(to('toy', toy.id));
    });
  return (
    <main class="page-main welcome">
      {cleared && <Cleared />}
      <TableScene />
      <h1 tabIndex={-1} ref={heading}>
        {say('screen.welcome.title')}
      </h1>
      <p>{say('screen.welcome.what')}</p>
      <h2 class="welcome-try">{say('screen.welcome.try')}</h2>
      <ul class="welcome-toys">
        {demoCards.slice(0, SHOWN).map((card) => (
          <li key={card.toy.name}>
            <button type="button" class="toy-face" onClick={() => take(card)}>
              <Portrait body={bodyFrom(card)} />
              <span>{card.toy.name}</span>
            </button>
          </li>
        ))}
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
