/**
 * In the page: what is wrong with how a screen lies in a window that it must fill without scrolling. One sentence a
 * fault. It is handed to the browser as text, so it uses nothing from outside itself.
 */
export function layoutFaults(touch: number): string[] {
  const found: string[] = [];
  // Not `innerWidth`: the window of a phone grows with a page too wide for it.
  const { scrollHeight, scrollWidth, clientWidth } = document.documentElement;
  if (scrollHeight > innerHeight) found.push(`the page is ${scrollHeight} high`);
  if (scrollWidth > clientWidth) found.push(`the page is ${scrollWidth} wide`);

  const shown = (each: Element) =>
    !each.closest('.unseen') && getComputedStyle(each).visibility !== 'hidden' && each.getClientRects().length > 0;
  const called = (each: Element) =>
    `“${(each.getAttribute('aria-label') ?? each.textContent ?? '').trim().slice(0, 30)}”`;
  const bounds = (each: Element | Range) => {
    const { left, top, right, bottom } = each.getBoundingClientRect();
    return { left, top, right, bottom };
  };
  type Box = ReturnType<typeof bounds>;
  const outside = (inner: Box, outer: Box) =>
    Math.max(outer.left - inner.left, outer.top - inner.top, inner.right - outer.right, inner.bottom - outer.bottom);
  const depth = (one: Box, other: Box) =>
    Math.min(
      Math.min(one.right, other.right) - Math.max(one.left, other.left),
      Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top),
    );
  /** Words that are meant to end in an ellipsis where there are too many of them. */
  const ends = (each: Element) =>
    [each, ...each.querySelectorAll('a')].some((one) => getComputedStyle(one).textOverflow === 'ellipsis');
  /** The lines of an element's own words, without the space its box has round them. */
  const wordsOf = (each: Element) => {
    const range = document.createRange();
    range.selectNodeContents(each);
    return ends(each) ? bounds(each) : bounds(range);
  };

  const pressed = [...document.querySelectorAll('button, a, input, select')].filter(shown);
  const said = [...document.querySelectorAll('h1, h2, p, li, dt, dd')].filter(
    (each) => shown(each) && each.textContent?.trim(),
  );
  const parts = [
    ...pressed.map((each) => ({ each, box: bounds(each) })),
    ...said.map((each) => ({ each, box: wordsOf(each) })),
  ];
  const window_ = { left: 0, top: 0, right: clientWidth, bottom: innerHeight };
  for (const { each, box } of parts) if (outside(box, window_) > 1) found.push(`${called(each)} leaves the window`);
  for (const [at, one] of parts.entries())
    for (const other of parts.slice(at + 1))
      if (!one.each.contains(other.each) && !other.each.contains(one.each) && depth(one.box, other.box) > 1)
        found.push(`${called(one.each)} lies over ${called(other.each)}`);
  for (const each of pressed) {
    const { left, top, right, bottom } = bounds(each);
    if (!each.matches('p a, input') && (Math.round(right - left) < touch || Math.round(bottom - top) < touch))
      found.push(`${called(each)} is too small to touch`);
    if (each.textContent?.trim() && outside(wordsOf(each), bounds(each)) > 1)
      found.push(`${called(each)} is larger than its button`);
  }
  for (const each of document.querySelectorAll('body *')) {
    const { overflowX, overflowY } = getComputedStyle(each);
    const cuts = overflowX !== 'visible' || overflowY !== 'visible';
    const more = each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1;
    if (cuts && more && shown(each) && !ends(each) && !each.closest('svg, input'))
      found.push(`${called(each)} is cut off`);
  }
  for (const word of document.querySelectorAll('svg text')) {
    const svg = word.closest('svg');
    if (svg && outside(bounds(word), bounds(svg)) > 1) found.push(`${called(word)} leaves its picture`);
  }
  return [...new Set(found)];
}
