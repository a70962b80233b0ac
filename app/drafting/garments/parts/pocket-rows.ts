import type { Mm } from '../../../body';

/** A pocket too small to sew on is left out; to which size, each says. */
export const pocketLeftOut = { choice: 'pocket', from: true, to: false, code: 'pocket-left-out', check: [] } as const;

/** Said where a paw does not go into it. */
export const pocketForLooks = { code: 'pocket-for-looks', measures: ['paw-girth'] } as const;

/** A hand edge shorter by less than this lets the paw in, mm. */
const HARDLY_MM = 0.5;

/** What is said of a hand edge that lets no paw in; null where it does. */
export const forLooks = (hand: Mm, needs: Mm) => (hand < needs - HARDLY_MM ? { hand, needs } : null);
