/** What a way out came to, as a code of `watchdog`; nothing where the page loads anew. */
export type Outcome = 'saved' | 'nothing' | 'failed' | 'no-network' | undefined;
