import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Icon, useWords } from '../../parts';
import { fileName } from '../shared/file-name';
import { saveFile } from '../shared/save-file';
import { passOverTaps } from '../shared/second-taps';
import { noteHappening } from '../shared/trouble/happened';
import { canPrint, printFile } from './print-frame';
import type { Pdf } from './use-pdf';

type PdfActsProps = {
  readonly pdf: Pdf;
  readonly name: string;
  /** It is on its way to paper. */
  readonly onTaken?: () => void;
};

/** Print the file where the browser can, save it; once it is saved, say where it went, and offer to open and print it or hand it to another app. */
export function PdfActs({ pdf, name, onTaken }: PdfActsProps) {
  const { say } = useWords();
  const [saved, setSaved] = useState<Pdf | null>(null);
  useEffect(passOverTaps, [saved]);
  if (pdf.is !== 'ready') {
    return (
      <button type="button" class="go" disabled>
        {say('screen.print.wait')}
      </button>
    );
  }
  const file = new File([pdf.file], `${fileName(name, 'pattern')}.pdf`, { type: 'application/pdf' });
  const save = () => {
    saveFile(file, file.name);
    setSaved(pdf);
    onTaken?.();
  };
  const isSaved = saved === pdf;
  const kept = say(canShare(file) ? 'screen.print.offers-share' : 'screen.print.offers');
  const offers = canPrint() ? say('list.after', { one: say('screen.print.offers-print'), two: kept }) : kept;
  return (
    <>
      {/* There before it has anything to tell: what comes with its words is not heard everywhere. */}
      <p class={isSaved ? 'print-saved' : 'print-saved soft small'} role="status">
        {isSaved ? say('screen.print.saved', { file: file.name }) : offers}
      </p>
      {isSaved ? (
        <Saved file={file} onAgain={save} />
      ) : (
        <>
          <Print file={file} onTaken={onTaken} />
          <Share file={file} onTaken={onTaken} />
          <button type="button" class="go" onClick={save}>
            <Icon name="save" />
            {say('screen.print.save')}
          </button>
        </>
      )}
    </>
  );
}

/** What comes next with the file; the focus goes to it, for the button that had it is gone. */
function Saved({ file, onAgain }: { readonly file: File; readonly onAgain: () => void }) {
  const { say } = useWords();
  const address = useAddress(file);
  const open = useRef<HTMLAnchorElement>(null);
  useLayoutEffect(() => open.current?.focus(), []);
  return (
    <>
      <button type="button" class="quiet" onClick={onAgain}>
        {say('screen.print.save-again')}
      </button>
      <Print file={file} />
      <Share file={file} />
      <a class="go" href={address} target="_blank" rel="noopener" ref={open}>
        {say('screen.print.open')}
      </a>
    </>
  );
}

/** Straight to the printer's window, where the browser can. */
function Print({ file, onTaken }: { readonly file: File; readonly onTaken?: (() => void) | undefined }) {
  const { say } = useWords();
  const [failed, setFailed] = useState(false);
  if (!canPrint()) return null;
  const print = async () => {
    setFailed(false);
    try {
      await printFile(file);
      onTaken?.();
    } catch (error) {
      noteHappening(error);
      setFailed(true);
    }
  };
  return (
    <>
      {failed && (
        <p class="print-saved" role="alert">
          {say('screen.print.print-failed')}
        </p>
      )}
      <button type="button" class="plain" onClick={() => void print()}>
        {say('screen.print.print')}
      </button>
    </>
  );
}

function Share({ file, onTaken }: { readonly file: File; readonly onTaken?: (() => void) | undefined }) {
  const { say } = useWords();
  if (!canShare(file)) return null;
  return (
    // Nothing waits for the share to end: some systems never tell.
    <button
      type="button"
      class="plain"
      onClick={() => {
        void navigator.share({ files: [file] }).catch(() => undefined);
        onTaken?.();
      }}
    >
      <Icon name="share" />
      {say('screen.print.share')}
    </button>
  );
}

const canShare = (file: File): boolean =>
  typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] });

/** An address for the file, as long as this is shown. */
function useAddress(file: File): string {
  const [address] = useState(() => URL.createObjectURL(file));
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return address;
}
