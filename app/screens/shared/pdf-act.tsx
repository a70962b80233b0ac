import { useEffect, useState } from 'preact/hooks';
import type { Unit } from '../../body';
import type { ShortTwin } from '../../drafting/output';
import { Icon, unless, useWords } from '../../parts';
import { WorkError, writeShortTwin } from '../../work/bridge';
import type { Liking } from './defaults';
import { fileName } from './file-name';
import { useLiking } from './liking';
import { saveFile } from './save-file';
import { useAttempt } from './trouble/attempt';
import { useNotice } from './trouble/notice';

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
  const { busy, save } = useSaving(`${fileName(name, 'hemling')}.pdf`, 'application/pdf', make);
  return (
    <button type="button" class="plain" {...unless(busy, save)}>
      <Icon name="save" />
      {words}
    </button>
  );
}

type ReadActProps = {
  /** What the file is called, without its ending. */
  readonly name: string;
  readonly what: () => ShortTwin;
};

/** What a PDF beside it says, as a page to be read: in large letters, or aloud. */
export function ReadAct({ name, what }: ReadActProps) {
  const { say } = useWords();
  const { busy, save } = useSaving(`${fileName(name, 'hemling')}.html`, 'text/html', (asked) =>
    writeShortTwin(what(), asked),
  );
  return (
    <button type="button" class="quiet" {...unless(busy, save)}>
      <Icon name="save" />
      {say('screen.print.twin')}
    </button>
  );
}

/** Makes a file when it is asked for, saves it, and says where it went: not every browser does. */
function useSaving(file: string, type: string, make: (asked: Asked) => Promise<Uint8Array | string>) {
  const { say, hand } = useWords();
  const notice = useNotice();
  const { print } = useLiking();
  const attempt = useAttempt();
  const [busy, setBusy] = useState(false);
  const [stop] = useState(() => new AbortController());
  useEffect(() => () => stop.abort(), [stop]);
  const save = () =>
    attempt(async () => {
      setBusy(true);
      try {
        const made = await make({ language: hand.locale, units: hand.unit, print, signal: stop.signal });
        saveFile(new Blob([typeof made === 'string' ? made : new Uint8Array(made)], { type }), file);
        notice({ words: say('screen.print.saved', { file }) });
      } catch (error) {
        if (!(error instanceof WorkError && error.code === 'work-cancelled')) throw error;
      } finally {
        setBusy(false);
      }
    });
  return { busy, save };
}
