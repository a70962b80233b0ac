import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { Piece } from '../../drafting/draft-types';
import { Icon, shownLength, useWords } from '../../parts';
import { drawPiece } from '../shared/pieces/piece-drawing';
import { PieceLines } from '../shared/pieces/piece-picture';
import { cutWords } from './cut-words';
import { edgeLabels } from './edge-labels';
import { usePanZoom } from './pan-zoom';
import './piece-viewer.css';

type PieceViewerProps = {
  readonly pieces: readonly Piece[];
  readonly at: number;
  readonly onTurn: (at: number) => void;
  readonly onClose: () => void;
};

/** One piece over the whole screen, with the lengths of its edges; to be moved, drawn nearer, and leafed through. */
export function PieceViewer({ pieces, at, onTurn, onClose }: PieceViewerProps) {
  const { say, hand } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const piece = pieces[at];
  const drawing = useMemo(() => piece && drawPiece(piece), [piece]);
  const view = usePanZoom(at);
  if (!piece || !drawing) return null;
  const name = say(`piece.${piece.name}`);
  const edge = 0.09 * Math.max(drawing.width, drawing.height) + 4;
  const box = [drawing.left - edge, drawing.top - edge, drawing.width + 2 * edge, drawing.height + 2 * edge];
  const unit = Math.max(drawing.width, drawing.height) / 100;
  return (
    <dialog class="piece-viewer" ref={dialog} onClose={onClose} aria-label={name}>
      <header class="piece-viewer-head">
        <button
          type="button"
          class="quiet round"
          aria-label={say('screen.close')}
          onClick={() => dialog.current?.close()}
        >
          <Icon name="cross" />
        </button>
        <h2>{name}</h2>
        <span class="soft small">{say('screen.pattern.piece-of', { at: at + 1, all: pieces.length })}</span>
      </header>
      <div class="piece-viewer-table" {...view.hold}>
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
      </div>
      <p class="soft small piece-viewer-note">
        {cutWords(say, piece)}. {say('screen.pattern.edges', { unit: say(`screen.unit.${hand.unit}`) })}
      </p>
      <footer class="piece-viewer-acts">
        <button
          type="button"
          class="plain round"
          aria-label={say('screen.pattern.before')}
          disabled={at === 0}
          onClick={() => onTurn(at - 1)}
        >
          <Icon name="back" />
        </button>
        <button type="button" class="plain round" aria-label={say('screen.pattern.smaller')} onClick={view.out}>
          <span aria-hidden="true">−</span>
        </button>
        <button type="button" class="plain round" aria-label={say('screen.pattern.larger')} onClick={view.near}>
          <Icon name="plus" />
        </button>
        <button
          type="button"
          class="plain round"
          aria-label={say('screen.pattern.after')}
          disabled={at === pieces.length - 1}
          onClick={() => onTurn(at + 1)}
        >
          <Icon name="on" />
        </button>
      </footer>
    </dialog>
  );
}
