/** Nothing of ours lies deeper in a row; a backup may be 32 deep. */
const DEEPEST = 20;

/**
 * A copy of any stored value that JSON can hold: bytes become lists of numbers, large whole numbers text, what is too
 * deep (or contains itself) null. Keys are in order, so that the same content has the same text.
 */
export function plain(value: unknown, depth = 0): unknown {
  if (value instanceof ArrayBuffer) return Array.from(new Uint8Array(value));
  if (typeof value === 'bigint') return String(value);
  if (typeof value !== 'object' || value === null) return value;
  if (depth > DEEPEST) return null;
  if (Array.isArray(value)) return value.map((each) => plain(each, depth + 1));
  if (value instanceof Date) return Number(value);
  const entries = Object.entries(value).sort(([one], [two]) => (one < two ? -1 : 1));
  return Object.fromEntries(entries.map(([key, each]) => [key, plain(each, depth + 1)]));
}

export const plainText = (value: unknown): string => JSON.stringify(plain(value)) ?? 'null';
