import { useWords } from '../../../parts';
import { type DrawingState, draftOf } from '../making/use-draft';
import { drawPiece } from './piece-drawing';
import { PieceLines } from './piece-picture';
import './pieces-strip.css';

const GAP_MM = 12;

/** All pieces side by side, to see at once what a change does. Nothing while there is nothing to draw. */
export function PiecesStrip({ drawn }: { readonly drawn: DrawingState }) {
  const { say } = useWords();
  const draft = draftOf(drawn);
  if (!draft) return null;
  const drawings = draft.pieces.map(drawPiece);
  const height = Math.max(...drawings.map((each) => each.height));
  let reached = GAP_MM;
  const placed = drawings.map((drawing) => {
    const at = reached;
    reached += drawing.width + GAP_MM;
    return { drawing, at };
  });
  return (
    <div class={drawn.is === 'drawing' ? 'strip drawing' : 'strip'}>
      <svg
        viewBox={`0 ${-GAP_MM} ${reached.toFixed(1)} ${(height + 2 * GAP_MM).toFixed(1)}`}
        role="img"
        aria-label={say('screen.pattern.pieces-count', { count: draft.pieces.length })}
      >
        {placed.map(({ drawing, at }, index) => (
          <g
            key={draft.pieces[index]?.name}
            transform={`translate(${(at - drawing.left).toFixed(1)} ${((height - drawing.height) / 2 - drawing.top).toFixed(1)})`}
          >
            <PieceLines drawing={drawing} />
          </g>
        ))}
      </svg>
    </div>
  );
}
