import { useEffect, useRef, useState } from 'preact/hooks';
import { Icon, Page, unless, useWords } from '../../parts';
import { backedUp, type Desk, type Looked, loadBackup } from '../../storage';
import { to } from '../shared/route';
import { saveFile } from '../shared/save-file';
import { troubleWords, useAttempt } from '../shared/trouble/attempt';
import { noteHappening } from '../shared/trouble/happened';
import { type Found, RestorePreview } from './restore-preview';
import { SecondCopies } from './second-copies';
import './settings.css';

/** Everything kept as one plain file, and back again; and the copies that keep themselves. */
export function BackupScreen() {
  const { say } = useWords();
  const attempt = useAttempt();
  const file = useRef<HTMLInputElement>(null);
  const desk = useDesk();
  const [busy, setBusy] = useState(false);
  const [saved, setSaved] = useState<string | null>(null);
  const [done, setDone] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const [found, setFound] = useState<Found | null>(null);
  if (!desk) return <main class="loading" aria-busy="true" />;
  const slowly = async (deed: () => Promise<void>) => {
    setBusy(true);
    setSaved(null);
    await attempt(deed);
    setBusy(false);
  };
  const save = () =>
    slowly(async () => {
      const { file, made } = await desk.save();
      saveFile(file, `hemling-${made.slice(0, 10)}.json`);
      await backedUp();
      setDone(null);
      setSaved(say('screen.backup.saved'));
    });
  const look = (reading: Promise<Looked>, from: Found['from']) =>
    slowly(async () => {
      const looked = await reading;
      setFound(looked.ok ? { ...looked.summary, from } : null);
      setWrong(looked.ok ? null : looked.code);
      setDone(null);
    });
  return (
    <Page title={say('screen.backup.title')} back={to('settings')}>
      <p>{say('screen.backup.what')}</p>
      <div>
        <button type="button" class="go" {...unless(busy, save)}>
          <Icon name="save" />
          {say('screen.backup.save')}
        </button>
      </div>
      <p role="status" class="backup-state">
        {saved}
      </p>
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
          if (chosen) void look(desk.look(chosen), 'file');
          event.currentTarget.value = '';
        }}
      />
      <div>
        <button type="button" class="plain" {...unless(busy, () => file.current?.click())}>
          {say('screen.backup.choose')}
        </button>
      </div>
      <p role="status" class="backup-state">
        {busy ? say('screen.backup.busy') : done}
      </p>
      {wrong && (
        <p class="wrong-words" role="alert">
          {troubleWords(say, wrong)}
        </p>
      )}
      {found && (
        <RestorePreview
          desk={desk}
          found={found}
          onDone={(what) => {
            setFound(null);
            setDone(say(`screen.backup.${what}`));
          }}
        />
      )}
      <SecondCopies
        desk={desk}
        onLook={(copy) => void look(desk.lookAtCopy(copy.store), 'copy')}
        onDone={(what, count) => setDone(say(`screen.copies.${what}`, { count }))}
      />
    </Page>
  );
}

/** A thread for as long as the screen is shown. */
function useDesk(): Desk | null {
  const [desk, setDesk] = useState<Desk | null>(null);
  useEffect(() => {
    let opened: Desk | undefined;
    loadBackup().then(({ openDesk }) => {
      opened = openDesk();
      setDesk(opened);
    }, noteHappening);
    return () => opened?.close();
  }, []);
  return desk;
}
