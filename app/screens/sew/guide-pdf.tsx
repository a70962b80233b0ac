import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import type { Way } from '../../drafting/guide';
import { Icon, useWords } from '../../parts';
import { printGuide, WorkError } from '../../work/bridge';
import { fileName } from '../shared/file-name';
import { saveFile } from '../shared/save-file';
import { useAttempt } from '../shared/trouble/attempt';

/** The same on paper, to lie beside the machine. */
export function GuidePdf({ draft, way }: { readonly draft: Draft; readonly way: Way }) {
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
        const bytes = await printGuide(draft, { language, units, way, signal: stop.signal });
        const file = new Blob([new Uint8Array(bytes)], { type: 'application/pdf' });
        saveFile(
          file,
          `${fileName(`${draft.toy} ${say(`garment.${draft.order.garment}.name`)} ${say('screen.sew.file')}`, 'sewing')}.pdf`,
        );
      } catch (error) {
        if (!(error instanceof WorkError && error.code === 'work-cancelled')) throw error;
      } finally {
        setBusy(false);
      }
    });
  return (
    <button type="button" class="plain" disabled={busy} onClick={save}>
      <Icon name="save" />
      {say('screen.sew.save')}
    </button>
  );
}
