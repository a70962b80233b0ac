import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../../parts';
import { LOUPE_ZOOM } from './loupe';
import { MarkPicture } from './mark-picture';
import { awayFrom, type Marks, markNear, type Sort, type Spot } from './marks';
import './marks.css';

type StageProps = {
  readonly picture: HTMLCanvasElement;
  readonly marks: Marks;
  readonly sorts: readonly Sort[];
  readonly held: number;
  readonly next: number | null;
  readonly onHold: (which: number) => void;
  readonly onSet: (which: number, spot: Spot, miss?: number) => void;
  readonly onNudge: (which: number, by: Spot) => void;
  /** What is drawn between the marks. */
  readonly children: ComponentChildren;
};

/** A touch this near to a mark takes hold of it, CSS px. */
const GRIP = 22;
/** As long as others are to be set, only a touch as near as this does: the card's corners may lie close together. */
const CLOSE_GRIP = 12;
/** A finger wanders this far while it only taps, CSS px. */
const STILL = 3;
/** Without the loupe a finger, or a mouse, misses by about this, CSS px, one standard deviation (common practice, no source). */
const BARE_MISS = { touch: 2.5, mouse: 1 };

type Grip = { readonly which: number; readonly from: Spot; readonly at: Spot; readonly moving: boolean };

/** The photo as large as there is room; touched, it takes the next mark, and a mark under the finger moves finely. */
export function Stage({ picture, marks, sorts, held, next, onHold, onSet, onNudge, children }: StageProps) {
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
    const near = markNear(marks, { x, y }, (next === null ? GRIP : CLOSE_GRIP) * scale);
    const which = near ?? next ?? held;
    const miss = BARE_MISS[event.pointerType === 'mouse' ? 'mouse' : 'touch'] * scale;
    if (near === null) onSet(which, { x, y }, miss);
    else onHold(which);
    const at = (near === null ? undefined : marks[near]?.spot) ?? { x, y };
    grip.current = { which, from: { x: event.clientX, y: event.clientY }, at, moving: false };
    svg.setPointerCapture(event.pointerId);
    svg.querySelectorAll<SVGGElement>('.spot-mark').item(which)?.focus({ preventScroll: true });
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
        {children}
        {sorts.map((sort, which) => {
          const mark = marks[which];
          return (
            mark && (
              <MarkPicture
                key={which}
                sort={sort}
                mark={mark}
                scale={scale}
                size={picture}
                away={awayFrom(marks, sorts, which)}
                held={which === held}
                onHold={() => onHold(which)}
                onNudge={(by) => onNudge(which, by)}
              />
            )
          );
        })}
      </svg>
    </section>
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
