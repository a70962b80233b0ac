import { Page, useWords } from '../../parts';
import { to } from '../shared/route';
import type { ScreenProps } from '../shared/screen-props';
import { BringActs } from './bring-acts';
import { faultWords } from './fault-words';
import { Preview } from './preview';
import { useCard } from './use-card';
import './incoming.css';

/** Where cards come in: always shown first, never kept before the maker says so. */
export function IncomingScreen({ query }: ScreenProps) {
  const { say } = useWords();
  const reading = useCard(query.get('shared'));
  if (reading.is === 'read' && reading.result.ok) {
    return <Preview card={reading.result.card} skipped={reading.result.skipped} />;
  }
  const wrong = reading.is === 'read' && !reading.result.ok ? reading.result.fault : null;
  return (
    <Page title={say(wrong ? 'screen.card.wrong' : 'screen.card.title')} back={to()}>
      <div role="status" aria-live="polite">
        {reading.is === 'reading' && <p>{say('screen.card.reading')}</p>}
        {wrong && (
          <div class="slip warn">
            <p>{faultWords(say, wrong)}</p>
            <p class="soft">{say('screen.card.unchanged')}</p>
          </div>
        )}
      </div>
      {reading.is !== 'reading' && <BringActs />}
    </Page>
  );
}
