import { isFitToKeep, pictureSize } from '../picture';
import type { Photo } from './rows';

/** Whether the bytes are a picture of the type they are said to be, and of a size that may be shown at every start. */
export function isPicture({ type, bytes }: Pick<Photo, 'type' | 'bytes'>): boolean {
  const size = pictureSize(new Uint8Array(bytes));
  return size?.type === type && isFitToKeep(size);
}

/** Type and bytes out of a data address in base64 (RFC 2397); null when it is none. */
export function fromDataAddress(address: string): { type: string; bytes: ArrayBuffer } | null {
  const [, type, data] = /^data:([a-z]+\/[a-z]+);base64,([A-Za-z0-9+/]*={0,2})$/.exec(address) ?? [];
  if (!type || !data || data.length % 4 !== 0) return null;
  return { type, bytes: Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0)).buffer };
}
