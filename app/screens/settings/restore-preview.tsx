import { useWords } from '../../parts';
import { backedUp, type Changes, type Desk, type ReadSummary, type Way } from '../../storage';
import { writtenDay } from '../../words';
import { useAttempt } from '../shared/trouble/attempt';

/** What was found, and whether in a file she has or in a copy that would go with this device. */
export type Found = ReadSummary & { readonly from: 'file' | 'copy' };

type RestorePreviewProps = {
  readonly desk: Desk;
  readonly found: Found;
  readonly onDone: (what: 'restored' | 'unchanged') => void;
};

/** What she would miss; the rest comes along unsaid. */
const told = ['toys', 'readings', 'garments', 'photos'] as const;

/** What a backup would change, before anything is changed: laid beside what is here, or, where that is another thing, in its place. */
export function RestorePreview({ desk, found, onDone }: RestorePreviewProps) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const { changes } = found;
  const restore = (way: Way) =>
    attempt(async () => {
      await desk.restore(way);
      // All that is here now is in that file: she has a backup of it.
      if (found.from === 'file' && (way === 'replace' || !replaces)) await backedUp();
      onDone('restored');
    });
  const amounts = (toys: number, readings: number) => [
    say('screen.backup.toys', { count: toys }),
    say('screen.backup.readings', { count: readings }),
  ];
  const added = { toys: changes.merge.toys.added, readings: changes.merge.readings.added };
  const replaces = toldOf(changes.replace, ({ changed, removed }) => changed + removed) > 0;
  const mergeWords = () => {
    if (added.toys + added.readings > 0)
      return say('screen.backup.merge-what', { added: amounts(added.toys, added.readings) });
    const newer = toldOf(changes.merge, (each) => each.added + each.changed) > 0;
    return say(newer ? 'screen.backup.merge-newer' : 'screen.backup.merge-none');
  };
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
      <p>{mergeWords()}</p>
      {replaces && (
        <p>
          {say('screen.backup.replace-what', {
            removed: amounts(changes.replace.toys.removed, changes.replace.readings.removed),
          })}
        </p>
      )}
      <div class="slip-acts">
        <button type="button" class="go" onClick={() => restore('merge')}>
          {say('screen.backup.merge')}
        </button>
        {replaces && (
          <button type="button" class="plain" onClick={() => restore('replace')}>
            {say('screen.backup.replace')}
          </button>
        )}
        <button type="button" class="quiet" onClick={() => onDone('unchanged')}>
          {say('screen.not-now')}
        </button>
      </div>
    </section>
  );
}

const toldOf = (changes: Changes, count: (change: Changes['toys']) => number): number =>
  told.reduce((sum, table) => sum + count(changes[table]), 0);
