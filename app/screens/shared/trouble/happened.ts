/** What went wrong since the app was opened, newest last: for the maker to copy, never sent anywhere. */
export type Happening = { readonly at: string; readonly code: string; readonly detail: string };

const MOST_KEPT = 20;
const happenings: Happening[] = [];

export function noteHappening(cause: unknown): void {
  happenings.push({ at: new Date().toISOString(), code: codeOf(cause), detail: detailOf(cause) });
  if (happenings.length > MOST_KEPT) happenings.shift();
}

export const whatHappened = (): readonly Happening[] => happenings;

/** Failures nobody caught are noted too. */
export function listenForTrouble(): void {
  addEventListener('error', (event) => noteHappening(event.error ?? event.message));
  addEventListener('unhandledrejection', (event) => noteHappening(event.reason));
}

/** Our own errors carry a code; others go by their name. */
export function codeOf(cause: unknown): string {
  if (typeof cause === 'object' && cause !== null) {
    if ('code' in cause && typeof cause.code === 'string') return cause.code;
    if ('name' in cause) return String(cause.name);
  }
  return 'unknown';
}

function detailOf(cause: unknown): string {
  if (!(cause instanceof Error)) return String(cause);
  const place = cause.stack?.split('\n').slice(0, 4).join(' | ');
  return place ?? cause.message;
}
