import { useEffect, useState } from 'preact/hooks';
import { unless, useWords } from '../../parts';
import { type CopyFound, loadBackup } from '../../storage';
import { writtenMoment } from '../../words';
import { troubleWords, useAttempt } from '../shared/trouble/attempt';
import { noteHappening } from '../shared/trouble/happened';

/** The store is gone or begun anew, and a second copy of the one before is still on this device: it comes back in one tap. */
export function CopyOffer() {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const [copy, setCopy] = useState<CopyFound | null>(null);
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => {
    loadBackup()
      .then(({ findCopies }) => findCopies())
      .then((found) => setCopy(found.find(({ here }) => !here) ?? null))
      .catch(noteHappening);
  }, []);
  if (!copy) return null;
  const bringBack = async () => {
    setBusy(true);
    await attempt(async () => {
      const desk = (await loadBackup()).openDesk();
      try {
        const looked = await desk.lookAtCopy(copy.store);
        setWrong(looked.ok ? null : looked.code);
        if (looked.ok) await desk.restore('merge');
      } finally {
        desk.close();
      }
    });
    setBusy(false);
  };
  return (
    <aside class="slip ask">
      <h2>{say('screen.copies.offer')}</h2>
      <p>{say('screen.copies.offer-what', { moment: writtenMoment(copy.at, hand.locale) })}</p>
      <button type="button" class="go" {...unless(busy, bringBack)}>
        {say('screen.copies.bring-back')}
      </button>
      {wrong && (
        <p class="wrong-words" role="alert">
          {troubleWords(say, wrong)}
        </p>
      )}
    </aside>
  );
}
