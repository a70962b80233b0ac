import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { withUnit } from '../../body';
import type { Draft, Piece } from '../../drafting/draft-types';
import { shownLength, useWords } from '../../parts';
import { drawPiece, type PieceDrawing } from '../shared/pieces/piece-drawing';
import { PiecePicture } from '../shared/pieces/piece-picture';
import { cutWords } from './cut-words';
import { PieceViewer } from './piece-viewer';

/** A piece is drawn no larger than this many pixels to the millimetre: a tiny pattern need not fill a desk. */
const LARGEST_SCALE = 1.6;
/** And no smaller than this, in a window there is no room in. */
const SMALLEST_SCALE = 0.05;
/** A piece so many times as wide as high is a strip: it goes across the whole sheet, so that a long one leaves the others large. */
const STRIP_RATIO = 4;
/** What lies beside a picture on the sheet, pixels. */
const BESIDE = 24;

/** Every piece at one scale, with its name, how many to cut and its size. */
export function PiecesView({ draft }: { readonly draft: Draft }) {
  const { say } = useWords();
  const [sheet, width] = useWidth();
  const drawings = useMemo(() => draft.pieces.map(drawPiece), [draft]);
  const scale = scaleFor(drawings, width);
  const [opened, setOpened] = useState<number | null>(null);
  return (
    <section class="pieces" aria-label={say('screen.pattern.pieces')}>
      <ul class="pieces-sheet" ref={sheet}>
        {draft.pieces.map((piece, index) => {
          const drawing = drawings[index];
          return (
            drawing && (
              <PieceCard
                key={piece.name}
                piece={piece}
                drawing={drawing}
                scale={scale}
                onOpen={() => setOpened(index)}
              />
            )
          );
        })}
      </ul>
      <p class="pieces-key soft small">{say('screen.pattern.key')}</p>
      {opened !== null && <PieceViewer draft={draft} at={opened} onTurn={setOpened} onClose={() => setOpened(null)} />}
    </section>
  );
}

type PieceCardProps = {
  readonly piece: Piece;
  readonly drawing: PieceDrawing;
  readonly scale: number;
  readonly onOpen: () => void;
};

function PieceCard({ piece, drawing, scale, onOpen }: PieceCardProps) {
  const { say, hand } = useWords();
  const size = [drawing.width, drawing.height].map((mm) => shownLength(mm, hand, true)).join(' × ');
  return (
    <li class={isStrip(drawing) ? 'strip' : undefined}>
      <button type="button" class="piece-card" onClick={onOpen}>
        <PiecePicture drawing={drawing} scale={scale} />
        <b>{say(`piece.${piece.name}`)}</b>
        <span class="soft small">{cutWords(say, piece)}</span>
        <span class="soft small piece-size">{withUnit(size, hand)}</span>
      </button>
    </li>
  );
}

function isStrip({ width, height }: PieceDrawing): boolean {
  return width > STRIP_RATIO * height;
}

/** Two of the wider pieces side by side on a phone, strips across it, none higher than it is wide; never larger than is useful. */
function scaleFor(drawings: readonly PieceDrawing[], width: number): number {
  const columns = width > 700 ? 4 : width > 420 ? 3 : 2.6;
  const scales = drawings.flatMap((drawing) => [
    ((isStrip(drawing) ? width : width / columns) - BESIDE) / drawing.width,
    width / drawing.height,
  ]);
  return Math.max(Math.min(LARGEST_SCALE, ...scales), SMALLEST_SCALE);
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
