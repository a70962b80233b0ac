import { part } from '../../rows/part';
import { tankSizes } from '../../sizes/tank';
import type { BodiceGives } from './bodice';

/** A tank cut: a bodice's neck moved out and down. */
export const tankPart = part<
  { choices: object; size: BodiceGives['size']; edge: never },
  { size: BodiceGives['size']; edge: never }
>({ sizes: [tankSizes] });
