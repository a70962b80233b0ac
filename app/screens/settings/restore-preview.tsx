import { useEffect, useState } from 'preact/hooks';
import { useWords } from '../../parts';
import { type Changes, loadBackup, type ReadBackup, type Way } from '../../storage';
import { useAttempt } from '../shared/trouble/attempt';

type RestorePreviewProps = { readonly backup: ReadBackup; readonly onDone: (what: 'restored' | 'unchanged') => void };

/** What a backup would change, before anything is changed: laid beside what is here, or in its place. */
export function RestorePreview({ backup, onDone }: RestorePreviewProps) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const [changes, setChanges] = useState<{ readonly [W in Way]: Changes } | null>(null);
  useEffect(() => {
    void attempt(async () => setChanges(await (await loadBackup()).previewImport(backup)));
  }, [backup]);
  if (!changes) return null;
  const restore = (way: Way) =>
    attempt(async () => {
      await (await loadBackup()).importAll(backup, way);
      onDone('restored');
    });
  const { toys, readings } = backup.contents;
  return (
    <section class="slip ask">
      <h2>{say('screen.backup.found')}</h2>
      <p>
        {say('screen.backup.holds-toys', { count: toys.length })}{' '}
        {say('screen.backup.holds-readings', { count: readings.length })}{' '}
        {backup.made &&
          say('screen.backup.made', {
            day: new Intl.DateTimeFormat(hand.locale, { dateStyle: 'medium' }).format(new Date(backup.made)),
          })}
      </p>
      {backup.unreadable > 0 && <p>{say('screen.backup.unreadable', { count: backup.unreadable })}</p>}
      <p>{say('screen.backup.merge-what', { count: changes.merge.readings.added, toys: changes.merge.toys.added })}</p>
      <p>
        {say('screen.backup.replace-what', {
          count: changes.replace.readings.removed,
          toys: changes.replace.toys.removed,
        })}
      </p>
      <div class="slip-acts">
        <button type="button" class="go" onClick={() => restore('merge')}>
          {say('screen.backup.merge')}
        </button>
        <button type="button" class="plain" onClick={() => restore('replace')}>
          {say('screen.backup.replace')}
        </button>
        <button type="button" class="quiet" onClick={() => onDone('unchanged')}>
          {say('screen.not-now')}
        </button>
      </div>
    </section>
  );
}
