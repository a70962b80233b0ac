import { useEffect } from 'preact/hooks';
import { withUnit } from '../../body';
import { useWords } from '../../parts';
import {
  askToPersist,
  findToy,
  loadBackup,
  loadCare,
  onWritten,
  setSetting,
  settings,
  type Typed,
} from '../../storage';
import { forgetTyped, typedLeft } from '../../storage/typed';
import { go, to } from '../shared/route';
import { noteHappening } from '../shared/trouble/happened';
import { useNotice } from '../shared/trouble/notice';
import { keepFocus } from './keep-focus';

/** Remembered on this device: the browser was asked to keep the store. */
const ASKED = 'device-asked-to-persist';

/**
 * What is done once the first screen is there: what was typed and not kept is offered, second copies are kept current,
 * records set aside are tried again, the focus is held, and after the first toy the browser is asked to keep the store. It shows nothing
 * itself.
 */
export function Care() {
  const { say, hand } = useWords();
  const notice = useNotice();
  const offer = async (typed: Typed) => {
    const { toyId, garmentId, measureId, text, unit } = typed;
    const address = to('toy', toyId, garmentId, 'measure', measureId);
    if (location.hash.startsWith(address)) return;
    const toy = (await findToy(toyId))?.name ?? '';
    notice({
      stays: true,
      words: say('screen.typed.left', {
        toy,
        name: say(`measure.${measureId}.name`),
        typed: withUnit(text, { unit: unit === 'in' ? 'in' : 'cm', locale: hand.locale }),
      }),
      act: { words: say('screen.typed.look'), run: () => go(address) },
      onClose: () => forgetTyped(toyId, measureId),
    });
  };
  const ask = async () => {
    if ((await settings())[ASKED] !== undefined) return;
    const { hasReadings } = await loadCare();
    if (!(await hasReadings())) return;
    await setSetting(ASKED, true);
    const kept = await askToPersist();
    notice({ words: say(`screen.persist.${kept === null ? 'unknown' : kept ? 'yes' : 'no'}`) });
  };
  useEffect(() => {
    typedLeft()
      .then((left) => Promise.all(left.map(offer)))
      .catch(noteHappening);
    loadCare()
      .then(({ tryAsideAgain }) => tryAsideAgain())
      .catch(noteHappening);
    let stopCopies: (() => void) | undefined;
    loadBackup().then(({ keepCopiesCurrent }) => {
      stopCopies = keepCopiesCurrent();
    }, noteHappening);
    const stopKeeping = keepFocus();
    const stopAsking = onWritten(() => void ask().catch(noteHappening));
    void ask().catch(noteHappening);
    return () => {
      stopAsking();
      stopKeeping();
      stopCopies?.();
    };
  }, []);
  return null;
}
