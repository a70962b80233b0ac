import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const COPIED = ['app', 'sw', 'assets', 'locales', '.config', 'package.json', 'tsconfig.json'];

export type Copy = {
  root: string;
  /** Puts a file there for as long as the callback looks. */
  planted: <T>(path: string, text: string, look: () => T) => T;
  /** What an installed tool prints; empty when it finds nothing wrong. */
  tool: (name: string, ...args: string[]) => string;
  remove: () => void;
};

/** A copy of the code in which a test may plant a breach. */
export function copyOfTheCode(): Copy {
  const root = realpathSync(mkdtempSync(join(tmpdir(), 'hemling-rules-')));
  for (const name of COPIED) cpSync(join(ROOT, name), join(root, name), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(root, 'node_modules'));
  return {
    root,
    planted: (path, text, look) => {
      const file = join(root, path);
      const before = existsSync(file) ? readFileSync(file) : undefined;
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, text);
      try {
        return look();
      } finally {
        if (before) writeFileSync(file, before);
        else rmSync(file);
      }
    },
    tool: (name, ...args) => {
      const { status, stdout, stderr } = spawnSync(join(ROOT, 'node_modules/.bin', name), args, {
        cwd: root,
        encoding: 'utf8',
      });
      return status === 0 ? '' : stdout + stderr;
    },
    remove: () => rmSync(root, { recursive: true }),
  };
}
