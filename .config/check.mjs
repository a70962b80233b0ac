// `npm run check`: everything that can be said of the code without running it, one line a check, then `N passed, N failed`.
// `npm run format` is the same with what can be repaired repaired first.
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { docsBreaches } from './docs.mjs';
import { glossaryBreaches } from './glossary.mjs';
import { gluedSentences } from './glued.mjs';
import { leftovers } from './leftovers.mjs';
import { localeBreaches } from './locales.mjs';
import { breachesOf } from './rooms.mjs';
import { ROOT } from './setup.mjs';

const SOURCES = ['app', 'sw', 'assets', 'locales', 'tests', '.config', 'package.json', 'tsconfig.json'];

/** No tool says more than this, bytes. */
const ENOUGH = 64 * 1024 * 1024;
const STYLE = ['check', '--config-path=.config/style.json', '--error-on-warnings', ...SOURCES];

/** What each check finds wrong: nothing when it passes. @type {Record<string, () => string | Promise<string>>} */
const CHECKS = {
  types: () => tool('tsc', ['--noEmit', '-p', 'tsconfig.json']),
  'types without node': () => tool('tsc', ['--noEmit', '-p', '.config/tsconfig.browser.json']),
  'types without browser or node': () => tool('tsc', ['--noEmit', '-p', '.config/tsconfig.pure.json']),
  'types of the service worker': () => tool('tsc', ['--noEmit', '-p', '.config/tsconfig.sw.json']),
  'style and cycles': () => tool('biome', STYLE),
  rooms: () => breachesOf(ROOT).join('\n'),
  'unused code and packages': () => tool('knip', ['--config', '.config/knip.json', '--no-progress']),
  'nothing left over': () => leftovers(ROOT).join('\n'),
  docs: () => docsBreaches(ROOT).join('\n'),
  'sentences whole': () => gluedSentences(ROOT).join('\n'),
  locales: () => localeBreaches(ROOT).join('\n'),
  glossaries: () => glossaryBreaches(ROOT).join('\n'),
};

if (process.argv.includes('--write')) await tool('biome', [...STYLE, '--write']);
// The tools run beside one another and beside our own checks: most of them use one processor.
const found = await Promise.all(
  Object.entries(CHECKS).map(async ([name, find]) => ({ name, wrong: await said(find) })),
);
for (const { name, wrong } of found) {
  console.log(`${wrong ? 'wrong' : 'right'}  ${name}`);
  if (wrong) console.log(wrong.replace(/^/gm, '       '));
}
const failed = found.filter(({ wrong }) => wrong).length;
console.log(`${found.length - failed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;

/** What a check says; one that cannot be done is wrong too. @param {() => string | Promise<string>} find */
async function said(find) {
  try {
    return await find();
  } catch (error) {
    return String(error);
  }
}

/** Runs an installed tool. @param {string} name @param {string[]} args @returns {Promise<string>} what it printed if it failed */
async function tool(name, args) {
  const env = { ...process.env, NO_COLOR: '1' };
  try {
    await promisify(execFile)(join(ROOT, 'node_modules/.bin', name), args, { cwd: ROOT, env, maxBuffer: ENOUGH });
    return '';
  } catch (error) {
    const { stdout = '', stderr = '' } = /** @type {{ stdout?: string, stderr?: string }} */ (error);
    return `${stdout}${stderr}`.trim() || `${name} failed: ${error}`;
  }
}
