/** A bar that takes more than this share of the window's height is no longer held: what it belongs to needs the room. */
const MOST_SHARE = 0.3;

type Edge = 'head' | 'foot';

/**
 * A bar that is held at an edge of the window, as a `ref`: how high it is (`--head`, `--foot`) keeps what has the focus out
 * from under it, and where letters are so large that it would hide the screen, it scrolls with the rest (`.loose`).
 */
export const headBar = held('head');
export const footBar = held('foot');

function held(edge: Edge): (bar: HTMLElement | null) => void {
  let watch: ResizeObserver | undefined;
  return (bar) => {
    watch?.disconnect();
    if (!bar) return document.documentElement.style.setProperty(`--${edge}`, '0px');
    watch = new ResizeObserver(() => {
      const loose = bar.offsetHeight > MOST_SHARE * innerHeight;
      bar.classList.toggle('loose', loose);
      document.documentElement.style.setProperty(`--${edge}`, loose ? '0px' : `${bar.offsetHeight}px`);
    });
    watch.observe(bar);
  };
}
