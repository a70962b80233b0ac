/** A bar that takes more than this share of the window's height is no longer held: what it belongs to needs the room. */
const MOST_SHARE = 0.3;

/** So much of the height at most a picture may take that is held below the head, or what it shows has no room. */
const MOST_PICTURE = 0.4;

type Edge = 'head' | 'foot' | 'picture';

/**
 * A bar that is held at an edge of the window, as a `ref`: how high it is (`--head`, `--foot`, `--picture`) keeps what has the focus out
 * from under it, and where letters are so large that it would hide the screen, it scrolls with the rest (`.loose`).
 */
export const headBar = held('head');
export const footBar = held('foot');
export const pictureBar = held('picture', MOST_PICTURE);

function held(edge: Edge, most = MOST_SHARE): (bar: HTMLElement | null) => void {
  let watch: ResizeObserver | undefined;
  return (bar) => {
    watch?.disconnect();
    if (!bar) return document.documentElement.style.setProperty(`--${edge}`, '0px');
    watch = new ResizeObserver(() => {
      const loose = bar.offsetHeight > most * innerHeight;
      bar.classList.toggle('loose', loose);
      document.documentElement.style.setProperty(`--${edge}`, loose ? '0px' : `${bar.offsetHeight}px`);
    });
    watch.observe(bar);
  };
}
