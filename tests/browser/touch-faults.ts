/**
 * In the page: what is pressed and is smaller than a finger is sure of, unless as much room round its middle leads to it.
 * It is handed to the browser as text, so it uses nothing from outside itself.
 */
export function touchFaults(touch: number): string[] {
  const found: string[] = [];
  /** From the middle to where a finger may come down, short of the edge itself. */
  const reach = touch / 2 - 1;
  /** What a tap on an element does is done by its label too. */
  const targetOf = (each: Element) =>
    each instanceof HTMLInputElement && /^(radio|checkbox|file)$/.test(each.type) ? (each.labels?.[0] ?? each) : each;
  const pressed = [...document.querySelectorAll('button, a[href], input, select, textarea, summary')].map(targetOf);
  for (const each of new Set(pressed)) {
    const inSentence = each.matches('p a, li a, dd a') && getComputedStyle(each).display === 'inline';
    // Points on a toy lie closer than a finger is wide: each is there in words too.
    if (inSentence || each.matches('.unseen, .unseen *, .tried-point') || each.getClientRects().length === 0) continue;
    const { width, height } = each.getBoundingClientRect();
    if (Math.round(width) >= touch && Math.round(height) >= touch) continue;
    each.scrollIntoView({ block: 'center' });
    const { left, top } = each.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    const around = [
      [x - reach, y],
      [x + reach, y],
      [x, y - reach],
      [x, y + reach],
    ] as const;
    const missed = around.filter(([at, down]) => !each.contains(document.elementFromPoint(at, down)));
    const name = (each.getAttribute('aria-label') ?? each.textContent ?? '').trim().slice(0, 30);
    if (missed.length > 0) found.push(`“${name}” is ${Math.round(width)} × ${Math.round(height)}`);
  }
  scrollTo(0, 0);
  return found;
}
