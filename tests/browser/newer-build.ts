import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesToKeep } from '../../.config/build.mjs';

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
    writeFileSync(file, text);
  }
  const worker = join(folder, 'sw.js');
  const known = Object.entries(filesToKeep(folder)).reduce(withHash, readFileSync(worker, 'utf8'));
  writeFileSync(worker, known);
}

/** A service worker's script that knows a file by its new hash. */
function withHash(script: string, [name, hash]: readonly [string, string]): string {
  const place = new RegExp(`(["'\`]${name.replaceAll('.', '\\.')}["'\`]:\\s*["'\`])[\\w+/=]{44}`);
  if (!place.test(script)) throw new Error(`the service worker does not know ${name}`);
  return script.replace(place, (_, before) => before + hash);
}
