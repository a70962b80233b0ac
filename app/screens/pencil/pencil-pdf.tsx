import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import { Icon, useWords } from '../../parts';
import { printPencil, WorkError } from '../../work/bridge';
import { fileName } from '../shared/file-name';
import { saveFile } from '../shared/save-file';
import { useAttempt } from '../shared/trouble/attempt';

/** All pieces' numbers as a file, for a friend's printer or a larger screen. */
export function PencilPdf({ draft }: { readonly draft: Draft }) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const [busy, setBusy] = useState(false);
  const [stop] = useState(() => new AbortController());
  useEffect(() => () => stop.abort(), [stop]);
  const save = () =>
    attempt(async () => {
      setBusy(true);
      try {
        const { locale: language, unit: units } = hand;
        const bytes = await printPencil(draft, { language, units, signal: stop.signal });
        const name = `${draft.toy} ${say(`garment.${draft.order.garment}.name`)} ${say('screen.pencil.file')}`;
        saveFile(new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }), `${fileName(name, 'pencil')}.pdf`);
      } catch (error) {
        if (!(error instanceof WorkError && error.code === 'work-cancelled')) throw error;
      } finally {
        setBusy(false);
      }
    });
  return (
    <button type="button" class="plain" disabled={busy} onClick={save}>
      <Icon name="save" />
      {say('screen.pencil.save')}
    </button>
  );
}
