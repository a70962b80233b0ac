import { useEffect, useState } from 'preact/hooks';
import type { Body } from '../../body';
import type { Draft } from '../../drafting/draft-types';
import type { Layout } from '../../drafting/sheets';
import { dressed } from '../../dressed';
import { useWords } from '../../parts';
import { layOut, print, WorkError } from '../../work/bridge';
import { codeOf, noteHappening } from '../shared/trouble/happened';

/** The toy in its clothes on the first page: as wide as high. */
const PICTURE = { width: 200, height: 200 };

/** How the PDF stands. It is made before it is asked for: a share sheet opens only straight from a tap. */
export type Pdf =
  | { readonly is: 'waiting' }
  | { readonly is: 'making'; readonly layout: Layout | null }
  | { readonly is: 'ready'; readonly layout: Layout; readonly file: Blob }
  | { readonly is: 'failed'; readonly code: string };

/** Which paper, pieces in halves or whole, and what to draw everything larger by. */
export type Sheets = { readonly paper: string; readonly halves: boolean; readonly correction: number };

export function usePdf(body: Body, draft: Draft | null, { paper, halves, correction }: Sheets): Pdf {
  const { hand } = useWords();
  const [pdf, setPdf] = useState<Pdf>({ is: 'waiting' });
  useEffect(() => {
    if (!draft) return;
    const stop = new AbortController();
    const { signal } = stop;
    const make = async () => {
      const layout = await layOut(draft, paper, { halves, correction, signal });
      if (signal.aborted) return;
      setPdf({ is: 'making', layout });
      const worn = dressed(body, draft, 'front', PICTURE);
      const bytes = await print(draft, layout, { language: hand.locale, units: hand.unit, worn, signal });
      if (signal.aborted) return;
      setPdf({ is: 'ready', layout, file: new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }) });
    };
    setPdf({ is: 'making', layout: null });
    make().catch((error) => {
      if (signal.aborted || (error instanceof WorkError && error.code === 'work-cancelled')) return;
      noteHappening(error);
      setPdf({ is: 'failed', code: codeOf(error) });
    });
    return () => stop.abort();
  }, [draft, paper, halves, correction, hand.locale, hand.unit]);
  return pdf;
}

/** The pages, as soon as they are laid out. */
export const layoutOf = (pdf: Pdf): Layout | null => ('layout' in pdf ? pdf.layout : null);
