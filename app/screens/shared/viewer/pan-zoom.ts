import { useEffect, useState } from 'preact/hooks';

const NEAREST = 8;
const STEP = 1.5;
/** A press of an arrow key moves by this share of the picture. */
const NUDGE = 0.08;

type Held = { readonly id: number; readonly x: number; readonly y: number };
type View = { readonly scale: number; readonly right: number; readonly down: number };

const WHOLE: View = { scale: 1, right: 0, down: 0 };

/**
 * A picture moved by finger, mouse or arrow keys, and drawn nearer by two fingers, wheel, + and −. Shares of the
 * picture's own size; `of` is what is looked at: another one begins whole.
 */
export function usePanZoom(of: unknown) {
  const [view, setView] = useState<View>(WHOLE);
  const [held, setHeld] = useState<readonly Held[]>([]);
  useEffect(() => setView(WHOLE), [of]);
  const zoom = (by: number) => setView((was) => kept({ ...was, scale: was.scale * by }));
  const move = (right: number, down: number) =>
    setView((was) => kept({ ...was, right: was.right + right, down: was.down + down }));
  const follow = (event: PointerEvent & { currentTarget: HTMLElement }) => {
    const before = held.find(({ id }) => id === event.pointerId);
    if (!before) return;
    const now = held.map((each) => (each === before ? { ...each, x: event.clientX, y: event.clientY } : each));
    const { clientWidth: width, clientHeight: height } = event.currentTarget;
    if (held.length > 1) zoom(spread(now) / Math.max(spread(held), 1));
    else move((event.clientX - before.x) / width, (event.clientY - before.y) / height);
    setHeld(now);
  };
  const release = ({ pointerId }: PointerEvent) => setHeld((all) => all.filter(({ id }) => id !== pointerId));
  return {
    scale: view.scale,
    near: () => zoom(STEP),
    out: () => zoom(1 / STEP),
    /** For what stands in a box of `[left, top, width, height]`. */
    transform: ([left = 0, top = 0, width = 1, height = 1]: readonly number[]) =>
      `translate(${left + width / 2 + view.right * width} ${top + height / 2 + view.down * height}) scale(${view.scale}) translate(${-left - width / 2} ${-top - height / 2})`,
    hold: {
      tabIndex: 0,
      onPointerDown: (event: PointerEvent & { currentTarget: HTMLElement }) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        setHeld((all) => [...all, { id: event.pointerId, x: event.clientX, y: event.clientY }]);
      },
      onPointerMove: follow,
      onPointerUp: release,
      onPointerCancel: release,
      onWheel: (event: WheelEvent) => {
        event.preventDefault();
        zoom(event.deltaY < 0 ? STEP ** 0.4 : STEP ** -0.4);
      },
      onKeyDown: ({ key }: KeyboardEvent) => {
        if (key === '+' || key === '=') zoom(STEP);
        if (key === '-') zoom(1 / STEP);
        const [right, down] = ARROWS[key] ?? [0, 0];
        if (right || down) move(right * NUDGE, down * NUDGE);
      },
    },
  };
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** Never smaller than whole, and never moved out of sight. */
function kept({ scale, right, down }: View): View {
  const within = Math.min(Math.max(scale, 1), NEAREST);
  const far = (within - 1) / 2 + 0.1;
  const bound = (share: number) => Math.min(Math.max(share, -far), far);
  return { scale: within, right: bound(right), down: bound(down) };
}

const spread = ([one, two]: readonly Held[]): number => (one && two ? Math.hypot(one.x - two.x, one.y - two.y) : 1);
