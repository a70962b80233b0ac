/** FNV-1a's prime and offset (public domain, Fowler, Noll and Vo). */
const PRIME = 0x01000193;
const OFFSET = 0x811c9dc5;

/** 32 hexadecimal digits that the same text gives again and another hardly ever: a name for a file, not a secret. */
export function fingerprint(text: string): string {
  const hashes = Uint32Array.from({ length: 4 }, (_, salt) => Math.imul(OFFSET ^ (48 + salt), PRIME));
  for (let i = 0; i < text.length; i += 1) {
    const letter = text.charCodeAt(i);
    for (let at = 0; at < hashes.length; at += 1) hashes[at] = Math.imul((hashes[at] ?? 0) ^ letter, PRIME);
  }
  return Array.from(hashes, (hash) => hash.toString(16).padStart(8, '0'))
    .join('')
    .toUpperCase();
}
