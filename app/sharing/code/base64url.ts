/** Base64 with the letters that survive in a link, unpadded (RFC 4648, section 5). */
export function toBase64Url(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replace(/\+/gu, '-')
    .replace(/\//gu, '_')
    .replace(/=+$/u, '');
}

/** Null for letters outside the alphabet, an impossible length, or a second spelling of the same bytes. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (!/^[\w-]*$/u.test(text) || text.length % 4 === 1) return null;
  const bytes = Uint8Array.from(atob(text.replace(/-/gu, '+').replace(/_/gu, '/')), (letter) => letter.charCodeAt(0));
  return toBase64Url(bytes) === text ? bytes : null;
}
