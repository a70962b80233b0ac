import { Icon, useWords } from '../../parts';
import { saveFile } from '../save-file';
import type { Pdf } from './use-pdf';

/** Save the file, or hand it to another app where the system has a way to. */
export function PdfActs({ pdf, name }: { readonly pdf: Pdf; readonly name: string }) {
  const { say } = useWords();
  if (pdf.is !== 'ready') {
    return (
      <button type="button" class="go" disabled>
        {say('screen.print.wait')}
      </button>
    );
  }
  const file = new File([pdf.file], `${fileName(name)}.pdf`, { type: 'application/pdf' });
  const shares = typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] });
  return (
    <>
      {shares && (
        // Nothing waits for the share to end: some systems never tell.
        <button
          type="button"
          class="plain"
          onClick={() => void navigator.share({ files: [file] }).catch(() => undefined)}
        >
          <Icon name="share" />
          {say('screen.print.share')}
        </button>
      )}
      <button type="button" class="go" onClick={() => saveFile(file, file.name)}>
        <Icon name="save" />
        {say('screen.print.save')}
      </button>
    </>
  );
}

/** A name that every file system takes: letters and digits of any script, the rest as hyphens. */
const fileName = (name: string): string =>
  name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 60) || 'pattern';
