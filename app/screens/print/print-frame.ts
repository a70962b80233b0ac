// A PDF straight to the browser's printer window, by a frame that nobody sees.

/** A frame that has not loaded by then never will, ms. */
const LONGEST_MS = 20_000;

/**
 * Whether this browser shows PDFs itself and prints them from a frame: Chromium on a desk does, and says so. Others show
 * the file but print its frame empty, or not at all; there it is saved or shared.
 */
export function canPrint(): boolean {
  const { pdfViewerEnabled, userAgentData } = navigator as Navigator & {
    readonly userAgentData?: { readonly mobile?: boolean };
  };
  return pdfViewerEnabled === true && userAgentData?.mobile === false;
}

let last: { readonly frame: HTMLIFrameElement; readonly address: string } | undefined;

/** Opens the printer window for a PDF; rejects where the browser will not. The frame stays until the next: the window reads from it. */
export async function printFile(file: Blob): Promise<void> {
  last?.frame.remove();
  if (last) URL.revokeObjectURL(last.address);
  const address = URL.createObjectURL(file);
  const frame = document.createElement('iframe');
  last = { frame, address };
  frame.className = 'print-frame';
  frame.tabIndex = -1;
  frame.ariaHidden = 'true';
  frame.src = address;
  await loaded(frame);
  const shown = frame.contentWindow;
  if (!shown) throw new Error('the frame has no window');
  shown.focus();
  shown.print();
}

function loaded(frame: HTMLIFrameElement): Promise<void> {
  return new Promise((done, failed) => {
    const late = setTimeout(() => failed(new Error('the frame did not load')), LONGEST_MS);
    frame.addEventListener('load', () => {
      clearTimeout(late);
      done();
    });
    document.body.append(frame);
  });
}
