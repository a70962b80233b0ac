// How the app and its service worker are bundled. Addresses are relative, so any sub-path of any static host works.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { firstWords } from './first-words.mjs';
import { ROOT } from './setup.mjs';

const MODERN_DEXIE = join(ROOT, 'node_modules/dexie/dist/modern/dexie.mjs');
const NOTHING = fileURLToPath(new URL('nothing.mjs', import.meta.url));

/** Only files of our own, no inline code, and one named policy for the addresses of workers. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types hemling',
].join('; ');

/** @type {import('vite').Plugin} */
const contentPolicy = {
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
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
  // jsPDF asks for these to draw web pages, which we never do: 90 kB saved.
  // Dexie's own entry holds its code for old browsers: 2 kB saved.
  resolve: { alias: { html2canvas: NOTHING, canvg: NOTHING, dompurify: NOTHING, dexie: MODERN_DEXIE } },
  worker: { format: 'es', plugins: () => [firstWords] },
  build: {
    outDir: join(ROOT, 'dist'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // The first page in one file: thirty small ones weigh more and take longer.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
  },
  plugins: [contentPolicy, firstWords],
};

/**
 * The service worker, one classic script beside index.html.
 * @param {string} folder the built app
 * @param {{ url: string, revision: string | null }[]} kept the files it keeps for offline use
 * @returns {import('vite').InlineConfig}
 */
export function workerConfig(folder, kept) {
  return {
    root: ROOT,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    define: { KEPT_FILES: JSON.stringify(kept) },
    build: {
      outDir: folder,
      emptyOutDir: false,
      target: 'es2022',
      rolldownOptions: { input: join(ROOT, 'sw/sw.ts'), output: { format: 'iife', entryFileNames: 'sw.js' } },
    },
  };
}

export default appConfig;
