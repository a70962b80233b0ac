import { useEffect, useState } from 'preact/hooks';
import { Gap, useWords } from '../../parts';
import { type Health, health } from '../../storage';
import { to } from '../shared/route';
import { noteHappening } from '../shared/trouble/happened';

/** A gentle word, after a good many numbers, that a backup would be wise. */
export function BackupReminder() {
  const { say } = useWords();
  const [found, setFound] = useState<Health | null>(null);
  useEffect(() => {
    health().then(setFound, noteHappening);
  }, []);
  if (!found?.remind) return null;
  return (
    <p class="soft small">
      {say('screen.backup.remind', { count: found.readingsSince })}
      <Gap />
      <a href={to('settings', 'backup')}>{say('screen.backup.save')}</a>
    </p>
  );
}
