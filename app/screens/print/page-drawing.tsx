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
  const { width, height, strip, long, cover, notes, placed } = page;
  const words = [cover?.title, cover?.card, notes?.words, notes?.key].filter((box) => box !== undefined);
  return (
    <g class="page-drawing">
      <rect class="page-paper" width={width} height={height} />
      {words.map((box) => (
        <path
          key={`${box.x} ${box.y}`}
          class="page-words"
          d={rows(box.height)
            .map((down) => `M${box.x + 3} ${box.y + down}h${box.width - 8}`)
            .join('')}
        />
      ))}
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

/** Lines of print, one below the other, mm. */
const LINE_MM = 6;
const rows = (height: number): readonly number[] =>
  Array.from({ length: Math.max(1, Math.floor(height / LINE_MM)) }, (_, row) => (row + 0.6) * LINE_MM);
