import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../parts';
import { LOUPE_ZOOM } from './loupe';
import { MarkPicture } from './mark-picture';
import { awayFrom, MARKS, type MarkIndex, type Marks, markNear, type Spot } from './marks';
import './marks.css';

type StageProps = {
  readonly picture: HTMLCanvasElement;
  readonly marks: Marks;
  readonly held: MarkIndex;
  readonly next: MarkIndex | null;
  readonly onHold: (which: MarkIndex) => void;
  readonly onSet: (which: MarkIndex, spot: Spot, miss?: number) => void;
  readonly onNudge: (which: MarkIndex, by: Spot) => void;
};

/** A touch this near to a mark takes hold of it, CSS px. */
const GRIP = 22;
/** A finger wanders this far while it only taps, CSS px. */
const STILL = 3;
/** Without the loupe a finger, or a mouse, misses by about this, CSS px, one standard deviation (common practice, no source). */
const BARE_MISS = { touch: 2.5, mouse: 1 };

type Grip = { readonly which: MarkIndex; readonly from: Spot; readonly at: Spot; readonly moving: boolean };

/** The photo as large as there is room; touched, it takes the next mark, and a mark under the finger moves finely. */
export function Stage({ picture, marks, held, next, onHold, onSet, onNudge }: StageProps) {
  const { say } = useWords();
  const { width, height } = picture;
  const sheet = useRef<HTMLCanvasElement>(null);
  const over = useRef<SVGSVGElement>(null);
  const grip = useRef<Grip | null>(null);
  const scale = useScale(over);
  useEffect(() => sheet.current?.getContext('2d')?.drawImage(picture, 0, 0), [picture]);

  const take = (event: PointerEvent) => {
    const svg = over.current;
    const matrix = svg?.getScreenCTM()?.inverse();
    if (!svg || !matrix || !event.isPrimary) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    if (x < 0 || y < 0 || x > width || y > height) return;
    const near = markNear(marks, { x, y }, GRIP * scale);
    const which = near ?? next ?? held;
    const miss = BARE_MISS[event.pointerType === 'mouse' ? 'mouse' : 'touch'] * scale;
    if (near === null) onSet(which, { x, y }, miss);
    else onHold(which);
    const at = near === null ? { x, y } : marks[near].spot;
    grip.current = { which, from: { x: event.clientX, y: event.clientY }, at, moving: false };
    svg.setPointerCapture(event.pointerId);
    svg.querySelectorAll<SVGGElement>('.spot-mark').item(which).focus({ preventScroll: true });
    event.preventDefault();
  };
  const drag = (event: PointerEvent) => {
    if (!grip.current || !event.isPrimary) return;
    const { which, from, at, moving } = grip.current;
    const by = { x: event.clientX - from.x, y: event.clientY - from.y };
    if (!moving && Math.hypot(by.x, by.y) < STILL) return;
    grip.current = { ...grip.current, moving: true };
    const fine = Math.min(1 / LOUPE_ZOOM, scale);
    onSet(which, { x: at.x + by.x * fine, y: at.y + by.y * fine });
  };
  const leave = () => {
    grip.current = null;
  };

  return (
    <section class="stage" aria-label={say('photo.picture')}>
      <canvas ref={sheet} width={width} height={height} />
      <svg
        ref={over}
        role="presentation"
        viewBox={`0 0 ${width} ${height}`}
        onPointerDown={take}
        onPointerMove={drag}
        onPointerUp={leave}
        onPointerCancel={leave}
      >
        <Lines marks={marks} />
        {MARKS.map((which) => (
          <MarkPicture
            key={which}
            which={which}
            mark={marks[which]}
            scale={scale}
            size={picture}
            away={awayFrom(marks, which)}
            held={which === held}
            onHold={() => onHold(which)}
            onNudge={(by) => onNudge(which, by)}
          />
        ))}
      </svg>
    </section>
  );
}

/** The card's edge as far as it is marked, and the length that is measured. */
function Lines({ marks }: { readonly marks: Marks }) {
  const path = (some: readonly Marks[number][]) =>
    some
      .filter(({ miss }) => miss !== null)
      .map(({ spot }, at) => `${at ? 'L' : 'M'}${spot.x} ${spot.y}`)
      .join('');
  const corners = marks.slice(0, 4);
  const edge = path(corners) + (corners.every(({ miss }) => miss !== null) ? 'Z' : '');
  return (
    <>
      <path class="stage-edge-under" d={edge} />
      <path class="stage-edge" d={edge} />
      <path class="stage-length-under" d={path(marks.slice(4))} />
      <path class="stage-length" d={path(marks.slice(4))} />
    </>
  );
}

/** Pixels of the picture to one CSS px, as it is shown now. */
function useScale(over: { readonly current: SVGSVGElement | null }): number {
  const [scale, setScale] = useState(1);
  useEffect(() => {
    const svg = over.current;
    if (!svg) return;
    const look = () => setScale(1 / (svg.getScreenCTM()?.a ?? 1));
    const watch = new ResizeObserver(look);
    watch.observe(svg);
    look();
    return () => watch.disconnect();
  }, []);
  return scale;
}
