// What README.md and DEVELOPERS.md name in backticks must be there: commands in package.json, paths on the disk.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export const DOCS = ['README.md', 'DEVELOPERS.md'];
/** These are made by a build or an install, and named all the same. */
const MADE = /^(dist|node_modules)(\/|$)/;

/**
 * One line for each path or command that the docs name, and each file that a command runs, that does not exist.
 * @param {string} root
 * @returns {string[]}
 */
export function docsBreaches(root) {
  const scripts = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).scripts;
  return [...scriptBreaches(root, scripts), ...DOCS.flatMap((doc) => docBreaches(root, doc, scripts))];
}

/** @param {string} root @param {Record<string, string>} scripts */
function scriptBreaches(root, scripts) {
  return Object.entries(scripts).flatMap(([name, script]) =>
    script
      .split(' ')
      .filter((word) => /\.(mjs|ts)$/.test(word) && !existsSync(join(root, word)))
      .map((file) => `package.json: no file ${file} for npm run ${name}`),
  );
}

/** @param {string} root @param {string} doc @param {Record<string, string>} scripts */
function docBreaches(root, doc, scripts) {
  if (!existsSync(join(root, doc))) return [`${doc} is missing`];
  return namedIn(readFileSync(join(root, doc), 'utf8')).flatMap((named) => {
    const command = commandOf(named);
    if (command) return command in scripts ? [] : [`${doc}: no command ${named}`];
    const path = pathOf(named);
    return !path || MADE.test(path) || existsSync(join(root, path)) ? [] : [`${doc}: no file ${path}`];
  });
}

/** What stands in backticks, and each line of a code block. @param {string} text */
function namedIn(text) {
  const blocks = [...text.matchAll(/^```[a-z]*\n([\s\S]*?)^```/gm)].flatMap((found) => (found[1] ?? '').split('\n'));
  const spans = [...text.replace(/^```[\s\S]*?^```/gm, '').matchAll(/`([^`\n]+)`/g)].map((found) => found[1] ?? '');
  return [...blocks, ...spans].map((named) => named.trim());
}

/** @param {string} named @returns {string | undefined} the npm script it runs */
function commandOf(named) {
  return /^npm (?:run (?:--silent |-s )?)?(?!ci\b|install\b|run\b)([\w:-]+)/.exec(named)?.[1];
}

/** @param {string} named @returns {string | undefined} the path it is, if it looks like one of ours */
function pathOf(named) {
  const isPath =
    /^[\w.-]+\/[\w./-]*$/.test(named) || /^(package|package-lock|tsconfig)\.json$|\.md$|^LICENSE$/.test(named);
  return isPath ? named.replace(/\/$/, '') : undefined;
}
