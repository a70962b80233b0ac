/**
 * Two clocks. The wall clock, which the maker reads and which may be wrong by years; and the order in which things were
 * written, which hangs on no clock: a hybrid logical clock (Kulkarni, Demirbas, Madappa, Avva, Leone: Logical Physical
 * Clocks, 2014), its time and its counter in one number, as in the paper's compact form. The counter carries into the
 * milliseconds, which people who write a few rows a second cannot tell.
 */

/** Year 2200: no wall clock is believed beyond, and nothing that comes from outside counts as later. */
export const LAST_DAY = 7_258_118_400_000;
/** Room above for a million million writes, so that a file that claims the last day cannot stop the counting. */
export const LAST_MOMENT = LAST_DAY + 2 ** 40;

/** What the device shows, ms since 1970: for people to read, never to compare by. */
export const wallClock = (): number => Math.min(Math.max(Math.trunc(Date.now()) || 0, 0), LAST_DAY);

/**
 * A moment later than all of `seen`, and not before the wall clock. To be called within the transaction that writes it,
 * with the moments of whatever it must be newer than: rows are their own clock, so no clock can be lost or lag behind.
 */
export const nextMoment = (...seen: readonly (number | undefined)[]): number =>
  Math.min(LAST_MOMENT, Math.max(wallClock(), ...seen.map((each) => (isMoment(each) ? each + 1 : 0))));

/** What is read straight from the store may be anything. */
const isMoment = (value: unknown): value is number =>
  typeof value === 'number' && value >= 0 && value <= LAST_MOMENT && Number.isInteger(value);
