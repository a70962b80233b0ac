/** A name that every file system takes: letters and digits of any script, the rest as hyphens; `otherwise` where none is left. */
export const fileName = (name: string, otherwise: string): string =>
  name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 60) || otherwise;
