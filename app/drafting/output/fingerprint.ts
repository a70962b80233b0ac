/** FNV-1a's prime and offset (public domain, Fowler, Noll and Vo). */
const PRIME = 0x01000193;
const OFFSET = 0x811c9dc5;

/** 32 hexadecimal digits that the same text gives again and another hardly ever: a name for a file, not a secret. */
export function fingerprint(text: string): string {
  return [0, 1, 2, 3]
    .map((salt) => fnv(`${salt}${text}`).toString(16).padStart(8, '0'))
    .join('')
    .toUpperCase();
}

function fnv(text: string): number {
  let hash = OFFSET;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), PRIME) >>> 0;
  return hash;
}
