import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Draft, Piece } from '../../drafting/draft-types';
import { shownLength, useWords } from '../../parts';
import { drawPiece, type PieceDrawing } from '../shared/pieces/piece-drawing';
import { PiecePicture } from '../shared/pieces/piece-picture';

/** A piece is drawn no larger than this many pixels to the millimetre: a tiny pattern need not fill a desk. */
const LARGEST_SCALE = 1.6;

/** Every piece at one scale, with its name, how many to cut and its size. */
export function PiecesView({ draft }: { readonly draft: Draft }) {
  const { say } = useWords();
  const [sheet, width] = useWidth();
  const drawings = useMemo(() => draft.pieces.map(drawPiece), [draft]);
  const scale = scaleFor(drawings, width);
  return (
    <section class="pieces" aria-label={say('screen.pattern.pieces')}>
      <ul class="pieces-sheet" ref={sheet}>
        {draft.pieces.map((piece, index) => {
          const drawing = drawings[index];
          return (
            drawing && (
              <PieceCard key={piece.name} garment={draft.order.garment} piece={piece} drawing={drawing} scale={scale} />
            )
          );
        })}
      </ul>
      <p class="pieces-key soft small">{say('screen.pattern.key')}</p>
    </section>
  );
}

type PieceCardProps = {
  readonly garment: string;
  readonly piece: Piece;
  readonly drawing: PieceDrawing;
  readonly scale: number;
};

function PieceCard({ piece, drawing, scale }: PieceCardProps) {
  const { say, hand } = useWords();
  const size = [drawing.width, drawing.height].map((mm) => shownLength(mm, hand, true)).join(' × ');
  return (
    <li class="piece-card">
      <PiecePicture drawing={drawing} scale={scale} />
      <b>{say(`piece.${piece.name}`)}</b>
      <span class="soft small">
        {say(
          piece.mirrored
            ? 'screen.pattern.cut-mirrored'
            : piece.onFold
              ? 'screen.pattern.cut-fold'
              : 'screen.pattern.cut',
          { count: piece.copies },
        )}
      </span>
      <span class="soft small piece-size">
        {size} {hand.unit}
      </span>
    </li>
  );
}

/** Two of the wider pieces side by side on a phone; never larger than life is useful. */
function scaleFor(drawings: readonly PieceDrawing[], width: number): number {
  const widest = Math.max(1, ...drawings.map((drawing) => drawing.width));
  const columns = width > 700 ? 4 : 2;
  return Math.min(LARGEST_SCALE, (width / columns - 24) / widest);
}

function useWidth() {
  const place = useRef<HTMLUListElement>(null);
  const [width, setWidth] = useState(320);
  useEffect(() => {
    if (!place.current) return;
    const watch = new ResizeObserver(([entry]) => entry && setWidth(entry.contentRect.width));
    watch.observe(place.current);
    return () => watch.disconnect();
  }, []);
  return [place, width] as const;
}
