import { useEffect, useRef } from 'preact/hooks';
import type { Spot } from './marks';

/** How large one pixel of the picture is seen, CSS px; a dragged mark moves as its picture in here does. */
export const LOUPE_ZOOM = 2;

type LoupeProps = { readonly picture: HTMLCanvasElement; readonly spot: Spot; readonly idle: boolean };

/** The pixels round a mark, enlarged, with a cross where it points; outside the picture it is paper. */
export function Loupe({ picture, spot, idle }: LoupeProps) {
  const glass = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const canvas = glass.current;
    const context = canvas?.getContext('2d');
    if (!canvas || !context) return;
    const zoom = LOUPE_ZOOM * devicePixelRatio;
    canvas.width = Math.round(canvas.clientWidth * devicePixelRatio);
    canvas.height = Math.round(canvas.clientHeight * devicePixelRatio);
    context.imageSmoothingEnabled = false;
    context.translate(canvas.width / 2, canvas.height / 2);
    context.scale(zoom, zoom);
    context.drawImage(picture, -spot.x, -spot.y);
  }, [picture, spot.x, spot.y]);
  return (
    <div class={idle ? 'loupe idle' : 'loupe'} aria-hidden="true">
      <canvas ref={glass} />
      <svg viewBox="-50 -50 100 100" aria-hidden="true" focusable="false">
        <path class="cross-under" d="M-40 0h34M6 0h34M0-40v34M0 6v34" />
        <path class="cross" d="M-40 0h34M6 0h34M0-40v34M0 6v34" />
      </svg>
    </div>
  );
}
