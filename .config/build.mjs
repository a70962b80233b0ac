// `npm run build`: the app, then the service worker that knows the app's files, into dist/.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build as bundle } from 'vite';
import { ROOT } from './setup.mjs';
import appConfig, { workerConfig } from './vite.config.mjs';

/** Served but not kept for offline use: what only other programs read, and what the app has bundled. */
const NOT_KEPT = /^(schema|demo|screenshots)\/|^icon-.*\.png$|\.map$/;

/** Named after their content by the bundler, so that a copy the browser has already need not be fetched anew. */
const NAMED = /^assets[\\/]/;

/** Builds everything. @param {string} folder where to; emptied first @returns {Promise<string>} the folder */
export async function build(folder) {
  await bundle({ ...appConfig, configFile: false, build: { ...appConfig.build, outDir: folder } });
  const kept = filesToKeep(folder);
  await bundle(workerConfig(folder, kept));
  const bytes = kept.reduce((sum, { url }) => sum + statSync(join(folder, url)).size, 0);
  console.log(`${kept.length} files, ${Math.round(bytes / 1024)} kB, are kept for offline use`);
  return folder;
}

/** The built files with a revision of their content. @param {string} folder */
function filesToKeep(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(join(folder, name)).isFile() && !NOT_KEPT.test(name))
    .map((name) => ({
      url: name.split(sep).join('/'),
      revision: NAMED.test(name) ? null : revisionOf(join(folder, name)),
    }))
    .sort((one, other) => (one.url < other.url ? -1 : 1));
}

/** @param {string} file */
function revisionOf(file) {
  return createHash('sha256').update(readFileSync(file)).digest('hex').slice(0, 16);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await build(join(ROOT, 'dist'));
