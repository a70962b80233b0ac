import { useMemo } from 'preact/hooks';
import { useWords } from '../../parts';
import { print } from '../../work/bridge';
import { lazily } from '../shared/lazily';
import { PdfAct } from '../shared/pdf-act';
import { drawPiece } from '../shared/pieces/piece-drawing';
import { usePanZoom } from '../shared/viewer/pan-zoom';
import { Viewer } from '../shared/viewer/viewer';
import { PageDrawing } from './page-drawing';
import type { Sheets } from './use-pdf';

const PageWords = lazily(async () => (await import('../shared/pieces/page-words')).PageWords);

type PageViewerProps = {
  readonly sheets: Sheets;
  readonly at: number;
  readonly name: string;
  readonly onTurn: (at: number) => void;
  readonly onClose: () => void;
};

/** One page over the whole screen, and a file of just this page, should it have come out wrong. */
export function PageViewer({ sheets, at, name, onTurn, onClose }: PageViewerProps) {
  const { say } = useWords();
  const { draft, layout } = sheets;
  const view = usePanZoom(at);
  const drawings = useMemo(() => draft.pieces.map(drawPiece), [draft]);
  const page = layout.pages[at];
  if (!page) return null;
  const title = say('screen.print.page', { page: at + 1 });
  const box = [-4, -4, page.width + 8, page.height + 8];
  return (
    <Viewer
      title={title}
      all={layout.pages.length}
      {...{ at, onTurn, onClose, view }}
      names={{ before: say('screen.print.page-before'), after: say('screen.print.page-after') }}
      note={
        <PdfAct
          words={say('screen.print.only')}
          name={`${name} ${at + 1}`}
          make={(asked) => print([sheets], { ...asked, only: [at], lane: 'print one page' })}
        />
      }
      words={<PageWords {...{ draft, layout, page }} />}
    >
      <svg viewBox={box.join(' ')} role="img" aria-label={title}>
        <g transform={view.transform(box)}>
          <PageDrawing draft={draft} page={page} drawings={drawings} nameOf={(piece) => say(`piece.${piece}`)} />
        </g>
      </svg>
    </Viewer>
  );
}
