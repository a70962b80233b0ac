import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { bundled } from '../../.config/one-module.mjs';

const FOLDER = 'node_modules/.cache/programs';

/** `npm run draft` as one file, for tests that start it forty times: its four hundred modules take most of each start. */
export async function draftProgram(): Promise<string> {
  const program = `${FOLDER}/draft.mjs`;
  const { code } = await bundled('app/command/draft.ts');
  mkdirSync(FOLDER, { recursive: true });
  // Two tests that make it at once never read half of it.
  writeFileSync(`${program}.${process.pid}`, code);
  renameSync(`${program}.${process.pid}`, program);
  return program;
}
