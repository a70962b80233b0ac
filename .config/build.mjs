// `npm run build`: the app, then the service worker that knows the app's files, into dist/.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build as bundle } from 'vite';
import { languageNeeding } from './faces.mjs';
import { wordsOf } from './first-words.mjs';
import { headersFile } from './headers.mjs';
import { ROOT } from './setup.mjs';
import appConfig, { watchdogConfig, workerConfig } from './vite.config.mjs';

/** Served but not kept for offline use: what only other programs read, and what the app has bundled. */
const NOT_KEPT = /^(schema|demo|screenshots|licences)\/|^icon-.*\.png$|\.map$|^_headers$|^sw\.js$/;

/** Builds everything. @param {string} folder where to; emptied first @returns {Promise<string>} the folder */
export async function build(folder) {
  await bundle({ ...appConfig, configFile: false, build: { ...appConfig.build, outDir: folder } });
  await bundle(watchdogConfig(folder));
  const { en: _, ...others } = wordsOf('watchdog');
  writeFileSync(join(folder, 'watchdog-words.json'), JSON.stringify(others));
  writeFileSync(join(folder, '_headers'), headersFile());
  const kept = filesToKeep(folder);
  await bundle(workerConfig(folder, kept));
  const size = (/** @type {string[]} */ names) =>
    Math.round(names.reduce((sum, name) => sum + statSync(join(folder, name)).size, 0) / 1024);
  const names = Object.keys(kept);
  const later = names.filter(languageNeeding);
  const always = names.filter((name) => !languageNeeding(name));
  console.log(
    `${always.length} files, ${size(always)} kB, are kept for offline use; ${size(later)} kB more once asked for`,
  );
  return folder;
}

/** Each built file that is kept, and the SHA-256 of its content in base64. @param {string} folder @returns {Record<string, string>} */
export function filesToKeep(folder) {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => name.split(sep).join('/'))
    .filter((name) => !NOT_KEPT.test(name))
    .sort();
  return Object.fromEntries(names.map((name) => [name, hashOf(join(folder, name))]));
}

/** @param {string} file */
const hashOf = (file) => createHash('sha256').update(readFileSync(file)).digest('base64');

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await build(join(ROOT, 'dist'));
