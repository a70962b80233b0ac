import { Icon, useWords } from '../../parts';
import { printTape } from '../../work/bridge';
import { saveFile } from '../shared/save-file';
import { useAttempt } from '../shared/trouble/attempt';

/** A tape to print and glue, for who has none. */
export function TapeAct() {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const save = () =>
    attempt(async () => {
      const bytes = await printTape({ language: hand.locale, units: hand.unit });
      saveFile(
        new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }),
        `${say('screen.settings.tape-file')}.pdf`,
      );
    });
  return (
    <button type="button" class="plain" onClick={save}>
      <Icon name="save" />
      {say('screen.settings.tape')}
    </button>
  );
}
