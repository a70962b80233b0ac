import type { Page } from 'playwright-core';
import { FONTS } from '../../.config/fonts.mjs';

export type Font = keyof typeof FONTS;

export const fonts = Object.keys(FONTS) as readonly Font[];

/** The families whose letters an element's own words are drawn with, as the browser tells them. */
export async function familiesOf(page: Page, selector: string): Promise<readonly string[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('DOM.enable');
  await session.send('CSS.enable');
  const { root } = await session.send('DOM.getDocument');
  const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector });
  const drawn = await session.send('CSS.getPlatformFontsForNode', { nodeId });
  await session.detach();
  return drawn.fonts.map(({ familyName }) => familyName);
}
