// `npm test`: installs what is missing, builds, runs every test, and ends with one line: `N passed, N failed`.
// What follows `--` goes to vitest: npm test -- tests/unit
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { installBrowsers, installPackages, ROOT, run } from './setup.mjs';

installPackages();
installBrowsers();
const { build } = await import('./build.mjs');
const built = await build(join(ROOT, 'dist')).catch((error) => {
  console.error(error.message);
});

const report = join(ROOT, 'node_modules/.cache/tests.json');
mkdirSync(join(report, '..'), { recursive: true });
rmSync(report, { force: true });
const succeeded = run(process.execPath, [
  ...['node_modules/vitest/vitest.mjs', 'run', '--config', '.config/vitest.config.ts'],
  ...['--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
  ...process.argv.slice(2),
]);
const { passed, failed } = countsOf(report, succeeded && built !== undefined);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;

/** What a report counts; a run that failed without naming a test has one failure. @param {string} file @param {boolean} succeeded */
function countsOf(file, succeeded) {
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, 'utf8'));
    const failed = numFailedTests + testResults.filter(failedUnnamed).length;
    return { passed: numPassedTests, failed: succeeded ? failed : Math.max(1, failed) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

/** A file that failed without a failed test in it: it could not be read, or what it sets up failed. @param {any} file */
function failedUnnamed({ status, assertionResults }) {
  return status === 'failed' && assertionResults.every((/** @type {any} */ test) => test.status !== 'failed');
}
