/**
 * What can go wrong with the store. `missing`: the browser offers none here (private windows). `blocked`: another tab
 * holds an older version open. `slow`: no answer in time. `newer`: written by a newer Hemling. `outdated`: a newer tab
 * took over, this one must reload. `forgotten`: everything was erased in another tab. `full`: no room on the device.
 * `bad-value`: the caller's value cannot be stored. `gone`: the record it belongs to no longer exists.
 */
export type StoreCode =
  | 'store-missing'
  | 'store-blocked'
  | 'store-slow'
  | 'store-broken'
  | 'store-newer'
  | 'store-outdated'
  | 'store-forgotten'
  | 'store-full'
  | 'store-bad-value'
  | 'store-gone';

/** A failed read or write. `unsaved` is what was to be written and is not: the screen keeps it and offers it as a file. */
export class StoreError extends Error {
  override readonly name = 'StoreError';
  constructor(
    readonly code: StoreCode,
    readonly unsaved?: unknown,
    cause?: unknown,
  ) {
    super(code, { cause });
  }
}

const codes: Readonly<Record<string, StoreCode>> = {
  QuotaExceededError: 'store-full',
  MissingAPIError: 'store-missing',
  SecurityError: 'store-missing',
  // Firefox answers this in windows that keep nothing.
  NotAllowedError: 'store-missing',
  VersionError: 'store-newer',
  TimeoutError: 'store-slow',
};

/** Puts any failure of Dexie or of the browser into one of our codes. */
export function toStoreError(cause: unknown, unsaved?: unknown): StoreError {
  if (cause instanceof StoreError)
    return unsaved === undefined ? cause : new StoreError(cause.code, unsaved, cause.cause);
  return new StoreError(codeOf(cause), unsaved, cause);
}

/** A full store comes in two shapes: thrown as such, or as an AbortError with the reason inside (at any depth). */
function codeOf(cause: unknown): StoreCode {
  for (let each = cause, depth = 0; each && depth < 5; each = innerOf(each), depth++) {
    const code = codes[nameOf(each)];
    if (code) return code;
  }
  return 'store-broken';
}

/** Failures after which a connection opened anew may well succeed: the browser dropped it (iOS does on resume). */
export function isConnectionLost(cause: unknown): boolean {
  if (cause instanceof StoreError || codeOf(cause) !== 'store-broken') return false;
  return [
    'DatabaseClosedError',
    'InvalidStateError',
    'UnknownError',
    'AbortError',
    'TransactionInactiveError',
  ].includes(nameOf(cause));
}

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';

function innerOf(error: unknown): unknown {
  if (typeof error !== 'object' || error === null) return undefined;
  return ('inner' in error && error.inner) || ('cause' in error && error.cause) || undefined;
}
