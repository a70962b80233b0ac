// Reads the app's modules as syntax, for the checks that look at code.
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { parseSync } from 'vite';

/**
 * Every TypeScript module below the folders, parsed when its program is asked for.
 * @param {string} root
 * @param {string[]} folders
 */
export function modulesOf(root, folders) {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => {
        const path = join(folder, name).split(sep).join('/');
        const source = readFileSync(join(root, path), 'utf8');
        return {
          path,
          source,
          get program() {
            return parseSync(path, source).program;
          },
        };
      }),
  );
}

/** Visits a node and all below it. @param {any} node @param {(node: any) => void} visit */
export function walk(node, visit) {
  if (Array.isArray(node)) for (const child of node) walk(child, visit);
  else if (node && typeof node === 'object') {
    if (typeof node.type === 'string') visit(node);
    for (const key of Object.keys(node)) walk(node[key], visit);
  }
}
