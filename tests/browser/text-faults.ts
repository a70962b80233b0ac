/**
 * In the page: text that is cut off, runs out of the window or out of its button, or (`pseudo`) stands in no language
 * file. It is handed to the browser as text, so it uses nothing from outside itself.
 */
export function textFaults(pseudo: boolean): string[] {
  const found: string[] = [];
  // The window of a phone (`innerWidth`) grows with a page too wide for it, what the page is laid out for does not.
  const { scrollWidth, clientWidth } = document.documentElement;
  if (scrollWidth > clientWidth) found.push(`the page is ${scrollWidth} wide in a window of ${clientWidth}`);
  const mine =
    /^(Hemling|Bramble|Thistle|in|cm|mm|English|[\d\s.,×–·%+−⁄⅛¼⅜½⅝¾⅞/]|A[034]|Letter|Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec|AM|PM|:|MB)*$/;
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  let open = 0;
  while (walker.nextNode()) {
    const text = walker.currentNode.textContent ?? '';
    const holder = walker.currentNode.parentElement;
    if (!holder || text.trim() === '' || holder.closest('.unseen, svg, option, pre')) continue;
    if (pseudo && open === 0 && !text.includes('⟦') && !mine.test(text.trim()))
      found.push(`not translated: “${text.trim().slice(0, 60)}”`);
    open += (text.match(/⟦/g) ?? []).length - (text.match(/⟧/g) ?? []).length;
    const range = document.createRange();
    range.selectNodeContents(walker.currentNode);
    // What an ellipsis ends is seen as far as its box.
    const seen = getComputedStyle(holder).textOverflow === 'ellipsis' ? holder : range;
    const { left, right, width } = seen.getBoundingClientRect();
    if (width > 0 && (left < -1 || right > clientWidth + 1))
      found.push(`out of the window: “${text.trim().slice(0, 60)}”`);
    for (let box: Element | null = holder; box && box !== document.body; box = box.parentElement) {
      const { overflowX, overflowY, textOverflow } = getComputedStyle(box);
      const meant = textOverflow === 'ellipsis';
      const cuts = !meant && [overflowX, overflowY].some((value) => value === 'hidden' || value === 'clip');
      if (cuts && (box.scrollWidth > box.clientWidth + 1 || box.scrollHeight > box.clientHeight + 1))
        found.push(`cut off: “${text.trim().slice(0, 60)}”`);
    }
    const button = holder.closest('button, .go, .plain, .pick');
    if (button) {
      const outer = button.getBoundingClientRect();
      const inner = range.getBoundingClientRect();
      if (
        inner.width > 0 &&
        (inner.left < outer.left - 1 || inner.right > outer.right + 1 || inner.bottom > outer.bottom + 1)
      )
        found.push(`out of its button: “${text.trim().slice(0, 60)}”`);
    }
  }
  return [...new Set(found)];
}
