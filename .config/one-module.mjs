// Bundles a test that computes for minutes into one module. Between modules a test runner looks every name up by a
// getter, at each use: half the time of a thousand drafts, and nothing of what is tested.
import { build } from 'vite';

/** @param {RegExp} tests paths of the tests that are bundled @returns {import('vite').Plugin} */
export function oneModule(tests) {
  return {
    name: 'one-module',
    enforce: 'pre',
    async load(id) {
      const path = id.split('?')[0];
      if (!path || !tests.test(path)) return null;
      const built = await build({
        configFile: false,
        logLevel: 'error',
        build: {
          ssr: path,
          write: false,
          sourcemap: true,
          target: 'node20',
          rolldownOptions: { output: { codeSplitting: false } },
        },
      });
      const [chunk] = 'output' in built ? built.output : [];
      return chunk?.type === 'chunk' ? { code: chunk.code, map: chunk.map } : null;
    },
  };
}
