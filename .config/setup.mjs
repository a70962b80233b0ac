// What a fresh machine lacks, put in place: the packages of package-lock.json, a browser to test with, and its fonts.
// Only node's own modules may be imported here, for it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { missingFonts } from './fonts.mjs';

export const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** @typedef {'chromium' | 'windowless' | 'firefox'} BrowserName */
/** @typedef {{ names: string[], elsewhere: string[], packaged: string, variable: string, instead?: BrowserName }} Browser */

/**
 * What to test with: its names on the path, where else it may lie, its package in Debian, the variable that names
 * another, and what does instead where it cannot be had.
 * @type {Record<BrowserName, Browser>}
 */
const BROWSERS = {
  chromium: {
    names: ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'],
    elsewhere: [
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
    ],
    packaged: 'chromium',
    variable: 'HEMLING_BROWSER',
  },
  // Chromium without windows of its own: the same pages for a fifth less of the processor.
  windowless: {
    names: ['chromium-headless-shell'],
    elsewhere: [],
    packaged: 'chromium-headless-shell',
    variable: 'HEMLING_BROWSER',
    instead: 'chromium',
  },
  firefox: {
    names: ['firefox-esr', 'firefox'],
    elsewhere: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
    packaged: 'firefox-esr',
    variable: 'HEMLING_FIREFOX',
  },
};

/** Installs the locked packages when they are missing or older than the lock file. */
export function installPackages() {
  const lock = statSync(join(ROOT, 'package-lock.json')).mtimeMs;
  const installed = statSync(join(ROOT, 'node_modules/.package-lock.json'), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  if (installed >= lock) return;
  const npm = process.env.npm_execpath;
  const [command, args] = npm ? [process.execPath, [npm]] : ['npm', []];
  if (!run(command, [...args, 'ci', '--include=dev'])) fail('The packages could not be installed.');
}

/**
 * The path of a browser: what its variable names, else the first found on this machine, or another that does instead.
 * @param {BrowserName} name @returns {string | undefined}
 */
export function findBrowser(name = 'chromium') {
  const browser = BROWSERS[name];
  return found(browser) ?? (browser.instead && found(BROWSERS[browser.instead]));
}

/** @param {Browser} browser */
function found({ names, elsewhere, variable }) {
  const named = process.env[variable];
  if (named) return named;
  const folders = (process.env.PATH ?? '').split(delimiter);
  return [...names.flatMap((each) => folders.map((folder) => join(folder, each))), ...elsewhere].find(existsSync);
}

/** Finds the browsers and the fonts to test with, and installs Debian's packages of what is not there. */
export function installBrowsers() {
  const names = /** @type {BrowserName[]} */ (Object.keys(BROWSERS));
  const missing = () => names.filter((name) => !findBrowser(name) && !BROWSERS[name].instead);
  const packages = [...missing().map((name) => BROWSERS[name].packaged), ...missingFonts()];
  if (packages.length > 0) {
    installDebian(packages);
    // By itself, and only where something is installed anyway: where it cannot be had, another does instead.
    if (!found(BROWSERS.windowless)) installDebian([BROWSERS.windowless.packaged]);
  }
  for (const name of missing())
    fail(`No ${name} found. Install it, or name one in ${BROWSERS[name].variable}, and try again.`);
  if (missingFonts().length > 0) fail(`Install the fonts of ${missingFonts().join(' and ')}, and try again.`);
}

/** Debian's packages, as whoever may install them. @param {readonly string[]} packages */
function installDebian(packages) {
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '--non-interactive'];
  const apt = (/** @type {string[]} */ ...args) => {
    const [command = '', ...rest] = [...asRoot, 'env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get', ...args];
    return run(command, rest);
  };
  apt('update');
  apt('install', '--yes', '--no-install-recommends', ...packages);
}

/** Runs a command in the repository, its output shown. @param {string} command @param {readonly string[]} args @returns {boolean} whether it succeeded */
export function run(command, args) {
  return spawnSync(command, args, { cwd: ROOT, stdio: 'inherit' }).status === 0;
}

/** @param {string} message @returns {never} */
function fail(message) {
  console.error(message);
  process.exit(1);
}
