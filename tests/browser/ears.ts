import type { CDPSession, Page } from 'playwright-core';

/** What a screen reader would say: words of a live region, or what has just got the focus. */
export type Heard = { readonly kind: 'said' | 'focus'; readonly role: string; readonly words: string };

/** Listens to a page as a screen reader does: to its live regions, and to the name of whatever gets the focus. */
export class Ears {
  private constructor(
    private readonly page: Page,
    private readonly session: CDPSession,
  ) {}
  readonly heard: Heard[] = [];

  static async on(page: Page): Promise<Ears> {
    await page.addInitScript(hearRegions);
    return new Ears(page, await page.context().newCDPSession(page));
  }

  /** Takes down what was said since it was last asked, and what has the focus now. */
  async listen(): Promise<void> {
    const said = await this.page.evaluate(() =>
      (window as unknown as { readonly saidAloud: Heard[] }).saidAloud.splice(0),
    );
    this.heard.push(...said);
    const now = await this.focused();
    const before = this.heard.findLast(({ kind }) => kind === 'focus');
    if (now.words !== before?.words || now.role !== before.role) this.heard.push(now);
  }

  private async focused(): Promise<Heard> {
    const { result } = await this.session.send('Runtime.evaluate', { expression: 'document.activeElement' });
    const { nodes } = await this.session.send('Accessibility.getPartialAXTree', {
      ...(result.objectId && { objectId: result.objectId }),
      fetchRelatives: false,
    });
    const [node] = nodes;
    const told = [node?.name?.value, node?.description?.value].filter(Boolean);
    return { kind: 'focus', role: String(node?.role?.value ?? 'none'), words: told.join(' | ') };
  }

  /** All that was heard, a line each. */
  lines(): string {
    return this.heard.map(({ kind, role, words }) => `${kind} ${role}: ${words}\n`).join('');
  }

  /** What is wrong with what was heard, a sentence each: a control without a name, a focus lost, words said twice in a row. */
  faults(): readonly string[] {
    return this.heard.flatMap((each, at) => {
      const before = this.heard[at - 1];
      const nameless = each.kind === 'focus' && each.words.trim() === '' ? [`no name: ${each.role}`] : [];
      // A link may be called what the screen it leads to is called.
      const moved = before?.kind === 'focus' && each.kind === 'focus';
      const twice = !moved && before?.words === each.words && each.words !== '' ? [`twice: ${each.words}`] : [];
      return [...nameless, ...twice];
    });
  }
}

/** In the page: keeps what its live regions say, as they change. It is handed to the browser as text. */
function hearRegions(): void {
  const aloud: unknown[] = [];
  Object.assign(window, { saidAloud: aloud });
  const REGIONS = '[aria-live]:not([aria-live="off"]), [role="status"], [role="alert"]';
  const wordsOf = (node: Node): string => {
    if (!(node instanceof Element)) return node.textContent ?? '';
    if (node.matches('[aria-hidden="true"], [hidden], style')) return '';
    if (node.tagName === 'svg') return node.getAttribute('aria-label') ?? '';
    return Array.from(node.childNodes, (each) => wordsOf(each)).join(node.matches('p, li, div, ul') ? ' ' : '');
  };
  const regionOf = (node: Node) => (node instanceof Element ? node : node.parentElement)?.closest(REGIONS);
  new MutationObserver((changes) => {
    const spoken = new Map<Element, Set<Node>>();
    const tell = (region: Element, node: Node) => spoken.set(region, (spoken.get(region) ?? new Set()).add(node));
    const fresh = new Set<Node>(changes.flatMap(({ addedNodes }) => [...addedNodes]));
    const isFresh = (region: Node) => [...fresh].some((node) => node.contains(region));
    for (const { type, target, addedNodes } of changes) {
      const region = regionOf(target);
      if (region?.isConnected && !isFresh(region))
        for (const node of type === 'characterData' ? [target] : addedNodes) if (node.isConnected) tell(region, node);
      for (const node of addedNodes)
        if (node instanceof Element && node.isConnected)
          for (const alert of [node, ...node.querySelectorAll('*')])
            if (alert.matches('[role="alert"]')) tell(alert, alert);
    }
    for (const [region, nodes] of spoken) {
      const whole = region.matches('[role="status"], [role="alert"], [aria-atomic="true"]');
      const outermost = [...nodes].filter(
        (node) => ![...nodes].some((other) => other !== node && other.contains(node)),
      );
      const words = (whole ? [region] : outermost)
        .map((node) => wordsOf(node))
        .join(' ')
        .replace(/\s+/g, ' ')
        .trim();
      if (words !== '') aloud.push({ kind: 'said', role: region.getAttribute('role') ?? 'live', words });
    }
  }).observe(document, { subtree: true, childList: true, characterData: true });
}
