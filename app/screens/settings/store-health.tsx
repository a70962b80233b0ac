import { useEffect, useState } from 'preact/hooks';
import { Gap, useWords } from '../../parts';
import { askToPersist, type Health, health } from '../../storage';
import { writtenAmount, writtenDay } from '../../words';
import { useAttempt } from '../shared/trouble/attempt';
import { noteHappening } from '../shared/trouble/happened';

const MB = 1_000_000;

/** Whether the browser promises to keep what is here, how much there is, and when it was last saved as a file. */
export function StoreHealth() {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const [found, setFound] = useState<Health | null>(null);
  const look = () => health().then(setFound, noteHappening);
  useEffect(() => void look(), []);
  if (!found) return <section class="slip" aria-busy="true" />;
  const kept = found.persisted === true ? 'yes' : found.persisted === false ? 'no' : 'unknown';
  return (
    <section class="slip">
      <h2>{say('screen.store.title')}</h2>
      <p>{say(`screen.store.persisted-${kept}`)}</p>
      {found.usedBytes !== null && (
        <p class="soft small">
          {say('screen.store.used', { used: writtenAmount(found.usedBytes / MB, 'megabyte', hand.locale) })}
        </p>
      )}
      <p class="soft small">
        {found.lastBackup
          ? say('screen.store.backed-up', { day: writtenDay(found.lastBackup, hand.locale) })
          : say('screen.store.never-backed-up')}
        <Gap />
        {found.remind && say('screen.backup.remind', { count: found.readingsSince })}
      </p>
      {found.aside > 0 && <p class="small">{say('screen.store.aside', { count: found.aside })}</p>}
      {kept !== 'yes' && <p class="soft small">{say('screen.store.home-screen')}</p>}
      {kept === 'no' && (
        <button type="button" class="plain" onClick={() => attempt(async () => void (await askToPersist().then(look)))}>
          {say('screen.store.ask')}
        </button>
      )}
    </section>
  );
}
