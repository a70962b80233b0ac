import { useWords } from '../../../parts';
import type { Mark, Size, Sort, Spot } from './marks';

type MarkPictureProps = {
  readonly sort: Sort;
  readonly mark: Mark;
  /** Pixels of the picture to one CSS px. */
  readonly scale: number;
  readonly size: Size;
  /** Which way its number stands. */
  readonly away: Spot;
  readonly held: boolean;
  readonly onHold: () => void;
  readonly onNudge: (by: Spot) => void;
};

/** Steps of the arrow keys, px of the picture: alone, and with the shift key. */
const STEP = 1;
const STRIDE = 10;

/** From the spot to the middle of its number, CSS px. */
const TAG_AWAY = 20;

const WAYS: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A mark: a ring round the very spot, its number beside it where it has one. One stop of the tab key, moved by the arrows. */
export function MarkPicture({ sort, mark, scale, size, away, held, onHold, onNudge }: MarkPictureProps) {
  const { say } = useWords();
  const { x, y } = mark.spot;
  const aside = { x: away.x * TAG_AWAY, y: away.y * TAG_AWAY };
  const looks = [sort.group, held && 'held', mark.miss === null && 'waiting'];
  return (
    <g
      class={`spot-mark ${looks.filter(Boolean).join(' ')}`}
      transform={`translate(${x} ${y}) scale(${scale})`}
      role="slider"
      tabIndex={0}
      aria-label={sort.name}
      aria-valuemin={0}
      aria-valuemax={size.width}
      aria-valuenow={Math.round(x)}
      aria-valuetext={say(mark.miss === null ? 'photo.unset' : 'photo.at', { x: Math.round(x), y: Math.round(y) })}
      onFocus={onHold}
      onKeyDown={(event) => {
        const way = WAYS[event.key];
        if (!way && event.key !== 'Enter') return;
        event.preventDefault();
        const step = event.shiftKey ? STRIDE : STEP;
        onNudge({ x: (way?.x ?? 0) * step, y: (way?.y ?? 0) * step });
      }}
    >
      <circle class="mark-reach" r="20" />
      <circle class="mark-ring-under" r="8" />
      <circle class="mark-ring" r="8" />
      {sort.tag && (
        <>
          <circle class="mark-tag" cx={aside.x} cy={aside.y} r="9" />
          <text x={aside.x} y={aside.y + 4.5}>
            {sort.tag}
          </text>
        </>
      )}
    </g>
  );
}
