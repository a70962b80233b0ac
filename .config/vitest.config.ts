import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { LongestFirst } from './longest-first.mjs';
import { oneModule } from './one-module.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const SECOND = 1000;
/** A browser mostly waits: a second one fills the time, a third would make both late. */
const BROWSERS_AT_ONCE = 2;
/** What computes for long. */
const COMPUTES = /\/tests\/(properties\/.+|unit\/(sheets|output-overlap|cloth|sewing)|reference\/pdf)\.test\.ts$/;

/**
 * One group after the other, so that a browser never waits for a processor that random drafts are using. What needs no
 * browser takes every processor there is: on a machine of two the default would leave one idle.
 */
export default defineConfig({
  root,
  cacheDir: `${root}node_modules/.vite`,
  plugins: [oneModule(COMPUTES)],
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    hookTimeout: 180 * SECOND,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/properties/**', 'tests/browser/**'],
          testTimeout: 180 * SECOND,
          maxWorkers: availableParallelism(),
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'properties',
          include: ['tests/properties/**/*.test.ts'],
          testTimeout: 600 * SECOND,
          maxWorkers: availableParallelism(),
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/say-fonts.ts'],
          testTimeout: 300 * SECOND,
          expect: { poll: { timeout: 20 * SECOND } },
          maxWorkers: BROWSERS_AT_ONCE,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
