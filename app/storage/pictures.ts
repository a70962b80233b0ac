import type { Photo } from './rows';

/** First bytes of each type: ISO/IEC 10918-1 B.1, PNG (W3C) 5.2, RFC 9649 2.4 (RIFF, size, WEBP). */
const beginnings: Readonly<Record<Photo['type'], RegExp>> = {
  'image/jpeg': /^ffd8ff/,
  'image/png': /^89504e470d0a1a0a/,
  'image/webp': /^52494646.{8}57454250/,
};

/** Whether the bytes begin as their type says. */
export const isPicture = ({ type, bytes }: Pick<Photo, 'type' | 'bytes'>): boolean =>
  beginnings[type].test(
    Array.from(new Uint8Array(bytes.slice(0, 12)), (byte) => byte.toString(16).padStart(2, '0')).join(''),
  );

/** Type and bytes out of a data address in base64 (RFC 2397); null when it is none. */
export function fromDataAddress(address: string): { type: string; bytes: ArrayBuffer } | null {
  const [, type, data] = /^data:([a-z]+\/[a-z]+);base64,([A-Za-z0-9+/]*={0,2})$/.exec(address) ?? [];
  if (!type || !data || data.length % 4 !== 0) return null;
  return { type, bytes: Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0)).buffer };
}
