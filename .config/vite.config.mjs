// How the app and its service worker are bundled. Addresses are relative, so any sub-path of any static host works.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { faces, languageNeeding } from './faces.mjs';
import { firstWords, wordsOf } from './first-words.mjs';
import { POLICY } from './headers.mjs';
import { ROOT } from './setup.mjs';

const MODERN_DEXIE = join(ROOT, 'node_modules/dexie/dist/modern/dexie.mjs');
const NOTHING = fileURLToPath(new URL('nothing.mjs', import.meta.url));

/** @type {import('vite').Plugin} */
const aroundTheApp = {
  name: 'around-the-app',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
    // Waits for nothing and nothing waits for it.
    {
      tag: 'script',
      attrs: { type: 'module', src: './watchdog.js', async: true, fetchpriority: 'low' },
      injectTo: 'head',
    },
  ],
};

/** @type {import('vite').UserConfig} */
const appConfig = {
  root: join(ROOT, 'app'),
  base: './',
  publicDir: join(ROOT, 'assets'),
  cacheDir: join(ROOT, 'node_modules/.vite'),
  logLevel: 'warn',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  // jsPDF asks for these to draw web pages, which we never do: 90 kB saved; fontkit for one to unpack fonts that are packed already: 55 kB.
  // Dexie's own entry holds its code for old browsers: 2 kB saved.
  resolve: {
    alias: {
      html2canvas: NOTHING,
      canvg: NOTHING,
      dompurify: NOTHING,
      'brotli/decompress.js': NOTHING,
      dexie: MODERN_DEXIE,
    },
  },
  worker: { format: 'es', plugins: () => [firstWords, faces] },
  build: {
    outDir: join(ROOT, 'dist'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // The first page in one file: thirty small ones weigh more and take longer.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
  },
  plugins: [aroundTheApp, firstWords, faces],
};

/**
 * The service worker, one classic script beside index.html.
 * @param {string} folder the built app
 * @param {Record<string, string>} kept the files it keeps for offline use, and what each must be
 * @returns {import('vite').InlineConfig}
 */
export function workerConfig(folder, kept) {
  return {
    root: ROOT,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: {
      KEPT_FILES: JSON.stringify(kept),
      WHEN_ASKED: JSON.stringify(Object.fromEntries(Object.keys(kept).map((name) => [name, languageNeeding(name)]))),
    },
    build: {
      outDir: folder,
      emptyOutDir: false,
      target: 'es2022',
      rolldownOptions: { input: join(ROOT, 'sw/sw.ts'), output: { format: 'iife', entryFileNames: 'sw.js' } },
    },
  };
}

/**
 * The watchdog, one script and its look beside index.html, with its English; its other languages lie beside it.
 * @param {string} folder the built app
 * @returns {import('vite').InlineConfig}
 */
export function watchdogConfig(folder) {
  return {
    root: ROOT,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: { WATCHDOG_WORDS: JSON.stringify(wordsOf('watchdog').en) },
    build: {
      outDir: folder,
      emptyOutDir: false,
      target: 'es2022',
      modulePreload: false,
      rolldownOptions: {
        input: { watchdog: join(ROOT, 'app/watchdog/index.ts') },
        output: { entryFileNames: '[name].js', assetFileNames: '[name][extname]' },
      },
    },
  };
}

export default appConfig;
