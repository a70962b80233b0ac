// Which languages there are words for: a file each in `locales/`, beside the notes for who translates.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

export const NOTES = 'notes.json';

/** @param {string} root @returns {string[]} names of files: `en.json` */
export const languageFiles = (root) =>
  readdirSync(join(root, 'locales')).filter((name) => name.endsWith('.json') && name !== NOTES);
