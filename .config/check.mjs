// `npm run check`: everything that can be said of the code without running it, one line a check, then `N passed, N failed`.
// `npm run format` is the same with what can be repaired repaired first.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { docsBreaches } from './docs.mjs';
import { glossaryBreaches } from './glossary.mjs';
import { gluedSentences } from './glued.mjs';
import { leftovers } from './leftovers.mjs';
import { localeBreaches } from './locales.mjs';
import { breachesOf } from './rooms.mjs';
import { ROOT } from './setup.mjs';

const write = process.argv.includes('--write') ? ['--write'] : [];
const SOURCES = ['app', 'sw', 'assets', 'locales', 'tests', '.config', 'package.json', 'tsconfig.json'];

/** What each check finds wrong: nothing when it passes. @type {Record<string, () => string>} */
const CHECKS = {
  types: () => tool('tsc', ['--noEmit', '-p', 'tsconfig.json']),
  'types without node': () => tool('tsc', ['--noEmit', '-p', '.config/tsconfig.browser.json']),
  'types without browser or node': () => tool('tsc', ['--noEmit', '-p', '.config/tsconfig.pure.json']),
  'types of the service worker': () => tool('tsc', ['--noEmit', '-p', '.config/tsconfig.sw.json']),
  'style and cycles': () =>
    tool('biome', ['check', '--config-path=.config/style.json', '--error-on-warnings', ...write, ...SOURCES]),
  rooms: () => breachesOf(ROOT).join('\n'),
  'unused code and packages': () => tool('knip', ['--config', '.config/knip.json', '--no-progress']),
  'nothing left over': () => leftovers(ROOT).join('\n'),
  docs: () => docsBreaches(ROOT).join('\n'),
  'sentences whole': () => gluedSentences(ROOT).join('\n'),
  locales: () => localeBreaches(ROOT).join('\n'),
  glossaries: () => glossaryBreaches(ROOT).join('\n'),
};

let passed = 0;
let failed = 0;
for (const [name, find] of Object.entries(CHECKS)) {
  const wrong = said(find);
  console.log(`${wrong ? 'wrong' : 'right'}  ${name}`);
  if (wrong) console.log(wrong.replace(/^/gm, '       '));
  if (wrong) failed += 1;
  else passed += 1;
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;

/** What a check says; one that cannot be done is wrong too. @param {() => string} find */
function said(find) {
  try {
    return find();
  } catch (error) {
    return String(error);
  }
}

/** Runs an installed tool. @param {string} name @param {string[]} args @returns {string} what it printed if it failed */
function tool(name, args) {
  const { status, stdout, stderr } = spawnSync(join(ROOT, 'node_modules/.bin', name), args, {
    cwd: ROOT,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
  return status === 0 ? '' : `${stdout ?? ''}${stderr ?? ''}`.trim() || `${name} failed`;
}
