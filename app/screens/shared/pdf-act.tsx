import { useEffect, useState } from 'preact/hooks';
import type { Unit } from '../../body';
import { Icon, useWords } from '../../parts';
import { WorkError } from '../../work/bridge';
import type { Liking } from './defaults';
import { fileName } from './file-name';
import { useLiking } from './liking';
import { saveFile } from './save-file';
import { useAttempt } from './trouble/attempt';

type Asked = {
  readonly language: string;
  readonly units: Unit;
  readonly print: Liking['print'];
  readonly signal: AbortSignal;
};

type PdfActProps = {
  readonly words: string;
  /** What the file is called, without its ending. */
  readonly name: string;
  readonly make: (asked: Asked) => Promise<Uint8Array>;
};

/** A PDF that is made when it is asked for, and saved; left alone when the screen is left. */
export function PdfAct({ words, name, make }: PdfActProps) {
  const { hand } = useWords();
  const { print } = useLiking();
  const attempt = useAttempt();
  const [busy, setBusy] = useState(false);
  const [stop] = useState(() => new AbortController());
  useEffect(() => () => stop.abort(), [stop]);
  const save = () =>
    attempt(async () => {
      setBusy(true);
      try {
        const bytes = await make({ language: hand.locale, units: hand.unit, print, signal: stop.signal });
        saveFile(new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }), `${fileName(name, 'hemling')}.pdf`);
      } catch (error) {
        if (!(error instanceof WorkError && error.code === 'work-cancelled')) throw error;
      } finally {
        setBusy(false);
      }
    });
  return (
    <button type="button" class="plain" disabled={busy} onClick={save}>
      <Icon name="save" />
      {words}
    </button>
  );
}
