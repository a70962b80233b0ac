import { useRef, useState } from 'preact/hooks';
import { Icon, Page, useWords } from '../../parts';
import { backedUp, loadBackup, type ReadBackup } from '../../storage';
import { to } from '../shared/route';
import { saveFile } from '../shared/save-file';
import { troubleWords, useAttempt } from '../shared/trouble/attempt';
import { RestorePreview } from './restore-preview';
import './settings.css';

/** Everything kept as one plain file, and back again. */
export function BackupScreen() {
  const { say } = useWords();
  const attempt = useAttempt();
  const file = useRef<HTMLInputElement>(null);
  const [done, setDone] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const [found, setFound] = useState<ReadBackup | null>(null);
  const save = () =>
    attempt(async () => {
      const { exportAll, backupFile } = await loadBackup();
      const backup = await exportAll();
      saveFile(backupFile(backup), `hemling-${backup.made.slice(0, 10)}.json`);
      await backedUp();
      setDone('saved');
    });
  const read = (chosen: File) =>
    attempt(async () => {
      const { readBackup } = await loadBackup();
      const result = await readBackup(chosen);
      setFound(result.ok ? result.backup : null);
      setWrong(result.ok ? null : result.code);
      setDone(null);
    });
  return (
    <Page title={say('screen.backup.title')} back={to('settings')}>
      <p>{say('screen.backup.what')}</p>
      <div>
        <button type="button" class="go" onClick={save}>
          <Icon name="save" />
          {say('screen.backup.save')}
        </button>
      </div>
      <h2>{say('screen.backup.back')}</h2>
      <p class="soft">{say('screen.backup.back-what')}</p>
      <input
        ref={file}
        class="unseen"
        type="file"
        accept=".json,application/json"
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          const [chosen] = event.currentTarget.files ?? [];
          if (chosen) void read(chosen);
          event.currentTarget.value = '';
        }}
      />
      <div>
        <button type="button" class="plain" onClick={() => file.current?.click()}>
          {say('screen.backup.choose')}
        </button>
      </div>
      <p role="status" class="backup-state">
        {done && say(`screen.backup.${done}`)}
      </p>
      {wrong && (
        <p class="wrong-words" role="alert">
          {troubleWords(say, wrong)}
        </p>
      )}
      {found && (
        <RestorePreview
          backup={found}
          onDone={(what) => {
            setFound(null);
            setDone(what);
          }}
        />
      )}
    </Page>
  );
}
