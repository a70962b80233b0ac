import { ribbedWristPart } from './ribbed-wrist';
import { sleeves } from './sleeve';

/** Sleeves, and what ends them. */
export const sleeveParts = [sleeves, ribbedWristPart] as const;
