import { useWords } from '../../parts';
import type { Desk, ReadSummary, Way } from '../../storage';
import { writtenDay } from '../../words';
import { useAttempt } from '../shared/trouble/attempt';

type RestorePreviewProps = {
  readonly desk: Desk;
  readonly found: ReadSummary;
  readonly onDone: (what: 'restored' | 'unchanged') => void;
};

/** What a backup would change, before anything is changed: laid beside what is here, or in its place. */
export function RestorePreview({ desk, found, onDone }: RestorePreviewProps) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const { changes } = found;
  const restore = (way: Way) =>
    attempt(async () => {
      await desk.restore(way);
      onDone('restored');
    });
  const amounts = (toys: number, readings: number) => [
    say('screen.backup.toys', { count: toys }),
    say('screen.backup.readings', { count: readings }),
  ];
  const added = { toys: changes.merge.toys.added, readings: changes.merge.readings.added };
  return (
    <section class="slip ask">
      <h2>{say('screen.backup.found')}</h2>
      <p>{say('list.row', { of: amounts(found.toys, found.readings) })}</p>
      {found.made && (
        <p>
          {say('screen.backup.made', {
            day: writtenDay(new Date(found.made), hand.locale),
          })}
        </p>
      )}
      {found.unreadable > 0 && <p>{say('screen.backup.unreadable', { count: found.unreadable })}</p>}
      {found.newer > 0 && <p>{say('screen.backup.newer', { count: found.newer })}</p>}
      <p>
        {added.toys + added.readings > 0
          ? say('screen.backup.merge-what', { added: amounts(added.toys, added.readings) })
          : say('screen.backup.merge-none')}
      </p>
      <p>
        {say('screen.backup.replace-what', {
          removed: amounts(changes.replace.toys.removed, changes.replace.readings.removed),
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
