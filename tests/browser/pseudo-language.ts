import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { DIST } from './browser';

type Words = { readonly [name: string]: string | Words };

/** How much longer a sentence gets than in English, at least: what German and French ask for on the whole. */
export const LONGER = 0.4;

/** Has a page read the pseudo-language in English's place: every sentence longer, accented, in brackets. */
export async function speakPseudo(page: Page): Promise<void> {
  await page.route(/\/assets\/en-[\w-]+\.js$/, async (route) => {
    const name = new URL(route.request().url()).pathname.split('/').at(-1) ?? '';
    const file = join(DIST, 'assets', readdirSync(join(DIST, 'assets')).find((each) => each === name) ?? '');
    const module = (await import(pathToFileURL(file).href)) as { default: Words };
    await route.fulfill({
      contentType: 'text/javascript',
      body: `export default ${JSON.stringify(pseudoWords(module.default))}`,
    });
  });
  await page.goto('about:blank');
}

function pseudoWords(words: Words): Words {
  return Object.fromEntries(
    Object.entries(words).map(([name, value]) => [
      name,
      typeof value === 'string' ? pseudoText(value) : pseudoWords(value),
    ]),
  );
}

const ACCENTED: Readonly<Record<string, string>> = {
  a: 'å',
  e: 'é',
  i: 'ï',
  o: 'ö',
  u: 'ü',
  A: 'Å',
  E: 'É',
  c: 'ç',
  n: 'ñ',
  y: 'ÿ',
};
const FILLING = ' ëxtrå';

/** A sentence in the pseudo-language. Names and numbers put into it do not count as its length, brackets neither. */
export function pseudoText(text: string): string {
  const parts = text.split(/(\{\{.*?\}\})/);
  const accented = parts.map((part) =>
    part.startsWith('{{') ? part : part.replace(/[aeiouAEcny]/g, (letter) => ACCENTED[letter] ?? letter),
  );
  const more = Math.ceil(LONGER * text.replace(/\{\{.*?\}\}/g, '').length);
  return `⟦${accented.join('')}${FILLING.repeat(Math.ceil(more / FILLING.length)).slice(0, more)}⟧`;
}
