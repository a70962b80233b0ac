// The letters a test can ask for: a narrow sans and a wide one, so that a layout holds on devices with either.
// Metrics decide: Liberation Sans is as wide as the sans of most phones, DejaVu Sans the widest that is common.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The family each gives, and Debian's package of it. @type {Record<'narrow' | 'wide', { family: string, package: string }>} */
export const FONTS = {
  narrow: { family: 'Liberation Sans', package: 'fonts-liberation' },
  wide: { family: 'DejaVu Sans', package: 'fonts-dejavu-core' },
};

/** What a browser's process is told, so that it finds one family and no other. @param {keyof typeof FONTS | undefined} font none: the device's own, and Japanese @returns {Record<string, string>} */
export function fontEnvironment(font) {
  return { FONTCONFIG_FILE: join(fileURLToPath(new URL('fonts', import.meta.url)), `${font ?? 'own'}.conf`) };
}

/** Debian's packages of the fonts that this machine lacks; elsewhere nobody can be asked, and the tests will tell. @returns {string[]} */
export function missingFonts() {
  if (process.platform !== 'linux') return [];
  if (spawnSync('fc-list', ['--version']).error)
    return ['fontconfig', ...Object.values(FONTS).map((font) => font.package)];
  return Object.values(FONTS)
    .filter(({ family }) => spawnSync('fc-list', [family], { encoding: 'utf8' }).stdout.trim() === '')
    .map((font) => font.package);
}
