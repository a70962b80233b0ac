import { useMemo, useState } from 'preact/hooks';
import type { Page } from '../../drafting/sheets';
import { useWords } from '../../parts';
import { drawPiece, type PieceDrawing } from '../shared/pieces/piece-drawing';
import { wordStrokes } from './page-drawing';
import { PageViewer } from './page-viewer';
import type { Sheets } from './use-pdf';
import './page-thumbs.css';

/** From one stroke to the next on a small page, mm: two lines of words. */
const BETWEEN_MM = 11;

type PageThumbsProps = { readonly sheets: Sheets; readonly name: string };

/** The pages of one toy drawn small: how many there are, and what lies on each; a tap shows one large. */
export function PageThumbs({ sheets, name }: PageThumbsProps) {
  const { say } = useWords();
  const { draft, layout } = sheets;
  const drawings = useMemo(() => draft.pieces.map(drawPiece), [draft]);
  const [opened, setOpened] = useState<number | null>(null);
  const { pages, least } = layout;
  return (
    <>
      {least > 1 && (
        <p class="soft small">
          {pages.length > least ? say('screen.print.no-fewer', { count: least }) : say('screen.print.fewest')}
        </p>
      )}
      <ol class="page-thumbs" aria-label={say('screen.print.pages', { count: pages.length })}>
        {pages.map((page, index) => (
          <li key={page.name}>
            <button
              type="button"
              class="page-open"
              aria-label={say('screen.print.look', { page: index + 1 })}
              onClick={() => setOpened(index)}
            >
              <PageThumb page={page} drawings={drawings} />
              <span class="soft small">{index + 1}</span>
            </button>
          </li>
        ))}
      </ol>
      {opened !== null && (
        <PageViewer sheets={sheets} at={opened} name={name} onTurn={setOpened} onClose={() => setOpened(null)} />
      )}
    </>
  );
}

function PageThumb({ page, drawings }: { readonly page: Page; readonly drawings: readonly PieceDrawing[] }) {
  return (
    <svg class="page-thumb" viewBox={`0 0 ${page.width} ${page.height}`} aria-hidden="true">
      <path class="page-words" d={wordStrokes(page, BETWEEN_MM)} />
      {page.placed.map(({ piece, whole, move }) => {
        const drawing = drawings[piece];
        const degrees = (move.turn * 180) / Math.PI;
        return (
          drawing && (
            <g key={piece} transform={`translate(${move.x} ${move.y}) rotate(${degrees})`}>
              <path d={drawing.cut} />
              {whole && drawing.mirrored && <path d={drawing.cut} transform="scale(-1 1)" />}
            </g>
          )
        );
      })}
    </svg>
  );
}
