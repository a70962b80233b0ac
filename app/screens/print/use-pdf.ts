import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import { useWords } from '../../parts';
import { layOut, print, WorkError } from '../../work/bridge';
import { codeOf, noteHappening } from '../shell/happened';

/** How the PDF stands. It is made before it is asked for: a share sheet opens only straight from a tap. */
export type Pdf =
  | { readonly is: 'waiting' }
  | { readonly is: 'making' }
  | { readonly is: 'ready'; readonly file: Blob; readonly pages: number }
  | { readonly is: 'failed'; readonly code: string };

export function usePdf(draft: Draft | null, paper: string): Pdf {
  const { hand } = useWords();
  const [pdf, setPdf] = useState<Pdf>({ is: 'waiting' });
  useEffect(() => {
    if (!draft) return;
    const stop = new AbortController();
    const { signal } = stop;
    setPdf({ is: 'making' });
    make(draft, paper, { language: hand.locale, units: hand.unit, signal }).then(
      (made) => !signal.aborted && setPdf(made),
      (error) => {
        if (signal.aborted || (error instanceof WorkError && error.code === 'work-cancelled')) return;
        noteHappening(error);
        setPdf({ is: 'failed', code: codeOf(error) });
      },
    );
    return () => stop.abort();
  }, [draft, paper, hand.locale, hand.unit]);
  return pdf;
}

async function make(draft: Draft, paper: string, options: Parameters<typeof print>[2]): Promise<Pdf> {
  const layout = await layOut(draft, paper, { ...(options.signal && { signal: options.signal }) });
  const bytes = await print(draft, layout, options);
  return {
    is: 'ready',
    file: new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }),
    pages: layout.pages.length,
  };
}
