import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import type { Layout, Print } from '../../drafting/sheets';
import { dressed, sidesOf } from '../../dressed';
import { useWords } from '../../parts';
import { draft, layOut, print, WorkError } from '../../work/bridge';
import type { Making } from '../shared/making/making';
import { codeOf, noteHappening } from '../shared/trouble/happened';
import type { PrintWish } from './wish';

/** The toy in its clothes on the first page: as wide as high. */
const PICTURE = { width: 200, height: 200 };

/** One toy's draft as it lies on paper. */
export type Sheets = { readonly draft: Draft; readonly layout: Layout };

/** How the PDF stands. It is made before it is asked for: a share sheet opens only straight from a tap. */
export type Pdf =
  | { readonly is: 'waiting' }
  | { readonly is: 'making'; readonly sheets: readonly Sheets[] }
  | {
      readonly is: 'ready';
      readonly sheets: readonly Sheets[];
      readonly file: Blob;
      readonly refused: readonly string[];
    }
  | { readonly is: 'failed'; readonly code: string };

/** Which paper, pieces in halves or whole, what to draw everything larger by, and what else she wishes. */
export type OnPaper = {
  readonly paper: string;
  readonly halves: boolean;
  readonly correction: number;
  readonly size: Print;
} & PrintWish;

/** The pattern of one toy, and of others beside it, in one file. `refused` names toys it cannot be drawn for. */
export function usePdf(making: Making, own: Draft | null, others: readonly Making[], how: OnPaper): Pdf {
  const { hand } = useWords();
  const [pdf, setPdf] = useState<Pdf>({ is: 'waiting' });
  const { paper, halves, correction, size, form, without, copies, list } = how;
  useEffect(() => {
    if (!own) return;
    const stop = new AbortController();
    const { signal } = stop;
    const make = async () => {
      const sheets: (Sheets & { worn: ReturnType<typeof dressed> })[] = [];
      const refused: string[] = [];
      for (const each of [making, ...others]) {
        const made = each === making ? own : await drawn(each, signal);
        if (!made) {
          refused.push(each.toy.name);
          continue;
        }
        const layout = await layOut(made, paper, { halves, correction, print: size, form, without, signal });
        if (signal.aborted) return;
        sheets.push({ draft: made, layout, worn: dressed(each.body, made, sidesOf(each.body, made)[0], PICTURE) });
        setPdf({ is: 'making', sheets: [...sheets] });
      }
      const bytes = await print(sheets, { language: hand.locale, units: hand.unit, copies, list, signal });
      if (signal.aborted) return;
      setPdf({ is: 'ready', sheets, refused, file: new Blob([new Uint8Array(bytes)], { type: 'application/pdf' }) });
    };
    setPdf({ is: 'making', sheets: [] });
    make().catch((error) => {
      if (signal.aborted || (error instanceof WorkError && error.code === 'work-cancelled')) return;
      noteHappening(error);
      setPdf({ is: 'failed', code: codeOf(error) });
    });
    return () => stop.abort();
  }, [own, others, paper, halves, correction, size, form, without, copies, list, hand.locale, hand.unit]);
  return pdf;
}

/** Null where the garment cannot be drawn for that toy. */
async function drawn({ body, garment, toy }: Making, signal: AbortSignal): Promise<Draft | null> {
  const outcome = await draft(body, garment.order, toy.name, { signal, lane: 'draft for another' });
  return outcome.ok ? outcome.draft : null;
}

/** What lies on paper so far. */
export const sheetsOf = (pdf: Pdf): readonly Sheets[] => ('sheets' in pdf ? pdf.sheets : []);
