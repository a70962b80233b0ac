import type { Draft } from '../../drafting/draft-types';
import type { Page } from '../../drafting/sheets';
import type { PieceDrawing } from '../shared/pieces/piece-drawing';
import { PieceLines } from '../shared/pieces/piece-picture';

type PageDrawingProps = {
  readonly draft: Draft;
  readonly page: Page;
  readonly drawings: readonly PieceDrawing[];
  readonly nameOf: (piece: string) => string;
};

/** A page as it will be printed, in its own mm: its pieces with their names, what is written as strokes, its check lines. */
export function PageDrawing({ draft, page, drawings, nameOf }: PageDrawingProps) {
  const { width, height, strip, long, placed } = page;
  return (
    <g class="page-drawing">
      <rect class="page-paper" width={width} height={height} />
      <path class="page-words" d={wordStrokes(page, LINE_MM)} />
      {placed.map(({ piece, whole, move }) => {
        const drawing = drawings[piece];
        const degrees = (move.turn * 180) / Math.PI;
        return (
          drawing && (
            <g key={piece} transform={`translate(${move.x} ${move.y}) rotate(${degrees})`}>
              <PieceLines drawing={{ ...drawing, mirrored: whole && drawing.mirrored, fold: null }} />
              <text
                class="page-name"
                x={whole || !drawing.mirrored ? drawing.left + drawing.width / 2 : drawing.width / 4}
                y={drawing.top + drawing.height / 2}
                font-size={Math.max(4, Math.min(9, drawing.width / 9))}
              >
                {nameOf(draft.pieces[piece]?.name ?? '')}
              </text>
            </g>
          )
        );
      })}
      {[strip.millimetres, strip.inches, ...(long ? [long] : [])].map(({ from, to }) => (
        <path key={`${from.x} ${from.y} ${to.x}`} class="page-check" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
      ))}
    </g>
  );
}

/** From one line of print to the next, mm. */
const LINE_MM = 6;

/** What is written beside the pieces, as a stroke every so many mm. */
export function wordStrokes({ cover, card, joining, notes, care, key }: Page, apart: number): string {
  return [cover?.title, card, joining, notes?.words, care, key]
    .flatMap((box) => box ?? [])
    .flatMap(({ x, y, width, height }) =>
      Array.from(
        { length: Math.max(1, Math.floor(height / apart)) },
        (_, row) => `M${x + 3} ${y + (row + 0.6) * apart}h${width - 8}`,
      ),
    )
    .join('');
}
