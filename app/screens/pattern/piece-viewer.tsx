import { useMemo } from 'preact/hooks';
import type { Draft } from '../../drafting/draft-types';
import { shownLength, useWords } from '../../parts';
import { lazily } from '../shared/lazily';
import { drawPiece } from '../shared/pieces/piece-drawing';
import { PieceLines } from '../shared/pieces/piece-picture';
import { usePanZoom } from '../shared/viewer/pan-zoom';
import { Viewer } from '../shared/viewer/viewer';
import { cutWords } from './cut-words';
import { edgeLabels } from './edge-labels';
import './piece-viewer.css';

const PieceWords = lazily(async () => (await import('../shared/pieces/piece-words')).PieceWords);

type PieceViewerProps = {
  readonly draft: Draft;
  readonly at: number;
  readonly onTurn: (at: number) => void;
  readonly onClose: () => void;
};

/** One piece over the whole screen, with the lengths of its edges. */
export function PieceViewer({ draft, at, onTurn, onClose }: PieceViewerProps) {
  const { say, hand } = useWords();
  const piece = draft.pieces[at];
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
      all={draft.pieces.length}
      {...{ at, onTurn, onClose, view }}
      names={{ before: say('screen.pattern.before'), after: say('screen.pattern.after') }}
      note={say('list.beside', {
        one: cutWords(say, piece),
        two: say('screen.pattern.edges', { unit: say(`screen.unit.${hand.unit}`) }),
      })}
      words={<PieceWords key={at} draft={draft} piece={at} />}
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
