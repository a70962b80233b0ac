import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Turns a built app into the next one, as if every file had changed: each asset has another name, every reference
 * follows, the page carries a mark, and the service worker knows it all.
 */
export function makeNewer(folder: string): void {
  const assets = readdirSync(join(folder, 'assets'));
  const renamed = assets.map((name) => [name, name.replace(/(\.\w+)$/, '-next$1')] as const);
  for (const [from, to] of renamed) renameSync(join(folder, 'assets', from), join(folder, 'assets', to));
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!/\.(html|js|css)$/.test(name)) continue;
    const file = join(folder, name);
    let text = readFileSync(file, 'utf8');
    for (const [from, to] of renamed) text = text.replaceAll(from, to);
    if (name === 'index.html') text = text.replace('<html', '<html data-version="newer"');
    if (name === 'sw.js') text = text.replace(/(index\.html[`"'],revision:[`"'])\w+/, '$1newer');
    writeFileSync(file, text);
  }
}
