// Bundles what computes for minutes, or starts again and again, into one module. Between modules a test runner looks
// every name up by a getter, at each use: half the time of a thousand drafts, and nothing of what is tested.
import { build } from 'vite';
import { firstWords } from './first-words.mjs';

/** @param {RegExp} tests paths of the tests that are bundled @returns {import('vite').Plugin} */
export function oneModule(tests) {
  return {
    name: 'one-module',
    enforce: 'pre',
    load(id) {
      const path = id.split('?')[0];
      return path && tests.test(path) ? bundled(path) : null;
    },
  };
}

/** A module with all of ours that it needs, packages left out. @param {string} path */
export async function bundled(path) {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    plugins: [firstWords],
    build: {
      ssr: path,
      write: false,
      sourcemap: true,
      target: 'node20',
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const [chunk] = 'output' in built ? built.output : [];
  if (chunk?.type !== 'chunk') throw new Error(`not a module: ${path}`);
  return { code: chunk.code, map: chunk.map };
}
