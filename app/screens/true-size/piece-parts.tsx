import { useEffect, useRef, useState } from 'preact/hooks';
import { Gap, Icon, unless, useWords } from '../../parts';
import type { PieceDrawing } from '../shared/pieces/piece-drawing';
import { PieceLines } from '../shared/pieces/piece-picture';
import { partsOf } from './parts-of';

type PiecePartsProps = { readonly drawing: PieceDrawing; readonly dotsPerMm: number };

/** Of the window's height for the piece; the rest is for what is said and pressed. */
const HEIGHT_SHARE = 0.6;
/** Half a cross, mm. */
const CROSS_MM = 4;

/** A piece at true size, as much of it at a time as the screen holds; crosses say how its parts lie to each other. */
export function PieceParts({ drawing, dotsPerMm }: PiecePartsProps) {
  const { say } = useWords();
  const [place, pixels] = useRoom();
  const [at, setAt] = useState(0);
  const scale = dotsPerMm / devicePixelRatio;
  const half = drawing.mirrored;
  const shown = { ...drawing, mirrored: false, ...(half ? { left: 0, width: drawing.width / 2 } : {}) };
  const room = { width: pixels.width / scale, height: pixels.height / scale };
  const { parts, crosses } = partsOf(shown, room);
  const part = parts[Math.min(at, parts.length - 1)] ?? { x: 0, y: 0 };
  return (
    <div class="true-parts" ref={place}>
      <p role="status">
        {parts.length > 1
          ? say('screen.true-size.part', { at: Math.min(at, parts.length - 1) + 1, all: parts.length })
          : say('screen.true-size.whole')}
        <Gap />
        {half && say('screen.true-size.half')}
      </p>
      <svg
        class="true-window"
        width={pixels.width}
        height={pixels.height}
        viewBox={`${part.x} ${part.y} ${room.width} ${room.height}`}
        role="img"
        aria-label={say('screen.true-size.picture')}
      >
        <PieceLines drawing={shown} />
        {crosses.map(({ x, y }) => (
          <path
            key={`${x} ${y}`}
            class="true-cross"
            d={`M${x - CROSS_MM} ${y}h${2 * CROSS_MM}M${x} ${y - CROSS_MM}v${2 * CROSS_MM}`}
          />
        ))}
      </svg>
      {parts.length > 1 && (
        <div class="calibrate-acts">
          <button
            type="button"
            class="plain round"
            aria-label={say('screen.true-size.before')}
            {...unless(at === 0, () => setAt(at - 1))}
          >
            <Icon name="back" />
          </button>
          <button
            type="button"
            class="plain round"
            aria-label={say('screen.true-size.after')}
            {...unless(at >= parts.length - 1, () => setAt(at + 1))}
          >
            <Icon name="on" />
          </button>
        </div>
      )}
    </div>
  );
}

function useRoom() {
  const place = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState({ width: 300, height: 300 });
  useEffect(() => {
    const box = place.current;
    if (!box) return;
    const look = () => setRoom({ width: box.clientWidth, height: Math.round(innerHeight * HEIGHT_SHARE) });
    const watch = new ResizeObserver(look);
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  return [place, room] as const;
}
