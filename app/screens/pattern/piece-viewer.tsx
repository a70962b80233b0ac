import { useMemo } from 'preact/hooks';
import type { Piece } from '../../drafting/draft-types';
import { shownLength, useWords } from '../../parts';
import { drawPiece } from '../shared/pieces/piece-drawing';
import { PieceLines } from '../shared/pieces/piece-picture';
import { usePanZoom } from '../shared/viewer/pan-zoom';
import { Viewer } from '../shared/viewer/viewer';
import { cutWords } from './cut-words';
import { edgeLabels } from './edge-labels';
import './piece-viewer.css';

type PieceViewerProps = {
  readonly pieces: readonly Piece[];
  readonly at: number;
  readonly onTurn: (at: number) => void;
  readonly onClose: () => void;
};

/** One piece over the whole screen, with the lengths of its edges. */
export function PieceViewer({ pieces, at, onTurn, onClose }: PieceViewerProps) {
  const { say, hand } = useWords();
  const piece = pieces[at];
  const drawing = useMemo(() => piece && drawPiece(piece), [piece]);
  const view = usePanZoom(at);
  if (!piece || !drawing) return null;
  const name = say(`piece.${piece.name}`);
  const edge = 0.09 * Math.max(drawing.width, drawing.height) + 4;
  const box = [drawing.left - edge, drawing.top - edge, drawing.width + 2 * edge, drawing.height + 2 * edge];
  const unit = Math.max(drawing.width, drawing.height) / 100;
  return (
    <Viewer
      title={name}
      all={pieces.length}
      {...{ at, onTurn, onClose, view }}
      names={{ before: say('screen.pattern.before'), after: say('screen.pattern.after') }}
      note={say('list.named', {
        name: cutWords(say, piece),
        what: say('screen.pattern.edges', { unit: say(`screen.unit.${hand.unit}`) }),
      })}
    >
      <svg viewBox={box.map((mm) => mm.toFixed(1)).join(' ')} role="img" aria-label={name}>
        <g transform={view.transform(box)}>
          <PieceLines drawing={drawing} />
          {edgeLabels(piece).map((label) => (
            <text
              key={label.name}
              class="piece-viewer-length"
              x={label.at.x}
              y={label.at.y}
              font-size={(4.2 * unit) / Math.sqrt(view.scale)}
              stroke-width={(0.9 * unit) / Math.sqrt(view.scale)}
              transform={`rotate(${label.turn.toFixed(0)} ${label.at.x.toFixed(1)} ${label.at.y.toFixed(1)})`}
            >
              {shownLength(label.length, hand, true)}
            </text>
          ))}
        </g>
      </svg>
    </Viewer>
  );
}
