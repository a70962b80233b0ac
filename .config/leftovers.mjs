// What must not stay in the code: silenced checks, notes to finish later, and parts switched off.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const FOLDERS = ['app', 'sw', 'tests', '.config', '.ci'];
const READ = /\.(tsx?|mjs|css)$|^run$/;
/** Written in halves, so that this file does not find itself. */
const LEFT_OVER = new RegExp(`biome-${'ignore'}|@ts-${'(ignore|nocheck)'}|\\b(TO${'DO'}|FIX${'ME'}|XX${'X'})\\b`);
/** A test may state that the compiler refuses something. */
const OUTSIDE_TESTS = new RegExp(`@ts-${'expect-error'}`);

/**
 * One line for each thing left over.
 * @param {string} root
 * @returns {string[]}
 */
export function leftovers(root) {
  return FOLDERS.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => READ.test(name))
      .flatMap((name) =>
        readFileSync(join(root, folder, name), 'utf8')
          .split('\n')
          .flatMap((line, index) => {
            const found = LEFT_OVER.exec(line) ?? (folder === 'tests' ? null : OUTSIDE_TESTS.exec(line));
            return found ? [`${folder}/${name}:${index + 1}: ${found[0]}`] : [];
          }),
      ),
  );
}
