import { useEffect, useState } from 'preact/hooks';
import { Gap, useWords } from '../../parts';
import { type CopyFound, type Desk, type FolderFound, loadBackup } from '../../storage';
import { writtenMoment } from '../../words';
import { useAttempt } from '../shared/trouble/attempt';
import { noteHappening } from '../shared/trouble/happened';

type Found = {
  readonly copies: readonly CopyFound[];
  readonly folder: FolderFound | null;
  readonly choosable: boolean;
};

type SecondCopiesProps = {
  readonly desk: Desk;
  /** The maker wants to see what a copy holds. */
  readonly onLook: (copy: CopyFound) => void;
  readonly onDone: (what: string, count: number) => void;
};

/** The copies that are kept current by themselves, each with its time: on this device, and in a folder chosen once. */
export function SecondCopies({ desk, onLook, onDone }: SecondCopiesProps) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const [found, setFound] = useState<Found | null>(null);
  const look = async () => {
    const { chosenFolder, findCopies, folderCanBeChosen } = await loadBackup();
    const folder = await chosenFolder();
    setFound({ copies: await findCopies(), folder, choosable: folder !== null || folderCanBeChosen() });
  };
  useEffect(() => void look().catch(noteHappening), []);
  if (!found) return <section aria-busy="true" />;
  const { folder } = found;
  const renew = (folder: FileSystemDirectoryHandle | null) =>
    attempt(async () => {
      await desk.copy(folder);
      await look();
    });
  const choose = () =>
    attempt(async () => {
      const { chooseFolder, chosenFolder } = await loadBackup();
      if (await chooseFolder()) await desk.copy((await chosenFolder())?.folder ?? null);
      await look();
    });
  const together = (place: FolderFound) =>
    attempt(async () => {
      const { allowFolder } = await loadBackup();
      if (!place.allowed && !(await allowFolder(place.folder))) return;
      const { merged, refused } = await desk.together(place.folder);
      await renew(place.folder);
      onDone(refused > 0 ? 'together-not-all' : merged > 0 ? 'together' : 'alone', merged);
    });
  const stop = () =>
    attempt(async () => {
      await (await loadBackup()).forgetFolder();
      await look();
    });
  return (
    <section class="copies">
      <h2>{say('screen.copies.title')}</h2>
      <p class="soft">{say('screen.copies.what')}</p>
      {found.copies.length === 0 && <p>{say('screen.copies.none')}</p>}
      <ul class="copies-list">
        {found.copies.map((copy) => (
          <li key={copy.store}>
            <span>
              {say(copy.here ? 'screen.copies.here' : 'screen.copies.before', {
                moment: writtenMoment(copy.at, hand.locale),
              })}
            </span>
            <button type="button" class="quiet" onClick={() => onLook(copy)}>
              {say('screen.copies.look')}
            </button>
          </li>
        ))}
        {folder && (
          <li>
            <span>
              {folder.at === null
                ? say('screen.copies.folder-empty', { name: folder.folder.name })
                : say('screen.copies.folder', {
                    name: folder.folder.name,
                    moment: writtenMoment(folder.at, hand.locale),
                  })}
              <Gap />
              {!folder.allowed && say('screen.copies.not-allowed')}
            </span>
            <button type="button" class="quiet" onClick={stop}>
              {say('screen.copies.stop')}
            </button>
          </li>
        )}
      </ul>
      <div class="slip-acts">
        <button type="button" class="plain" onClick={() => renew(folder?.allowed ? folder.folder : null)}>
          {say('screen.copies.now')}
        </button>
        {folder ? (
          <button type="button" class="plain" onClick={() => together(folder)}>
            {say('screen.copies.together')}
          </button>
        ) : (
          found.choosable && (
            <button type="button" class="plain" onClick={choose}>
              {say('screen.copies.choose')}
            </button>
          )
        )}
      </div>
      <p class="soft small">{say(found.choosable ? 'screen.copies.folder-what' : 'screen.copies.no-folder')}</p>
    </section>
  );
}
