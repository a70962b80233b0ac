import { Icon, useWords } from '../../parts';
import { fileName } from '../shared/file-name';
import { saveFile } from '../shared/save-file';
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
  const file = new File([pdf.file], `${fileName(name, 'pattern')}.pdf`, { type: 'application/pdf' });
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
