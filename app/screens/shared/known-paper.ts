import { findPaper } from '../../drafting/sheets';

/** Every printer takes it, or says so. */
const USUAL = 'a4';

/** The paper kept in the settings, if there is one of that name. */
export const knownPaper = (kept: string): string => (findPaper(kept) ? kept : USUAL);
