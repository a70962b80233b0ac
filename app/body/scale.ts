import type { Body } from './body';
import type { Mm } from './units';

/** How large a toy is, for all that is sewn alike on toys of about one size. */
export type Scale = 'small' | 'usual' | 'large';
export type ByScale = Readonly<Record<Scale, Mm>>;

/** A toy is small under this chest, and large from the other on, mm (common practice, no source). */
const SMALL_UNDER_MM = 220;
const LARGE_FROM_MM = 450;

/** By the chest as it was measured: nothing is made another way on the word of an estimate. */
export function scaleOf({ sizes }: Pick<Body, 'sizes'>): Scale {
  const chest = sizes['chest-girth'];
  if (!chest || chest.from === 'estimate') return 'usual';
  return chest.value < SMALL_UNDER_MM ? 'small' : chest.value < LARGE_FROM_MM ? 'usual' : 'large';
}
