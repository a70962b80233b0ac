import type { Body } from './body';
import type { Mm } from './units';

/** How large a toy is, for all that is sewn alike on toys of about one size. */
export type Scale = 'small' | 'usual' | 'large';
export type ByScale = Readonly<Record<Scale, Mm>>;

/** A toy is small under this chest, and large from the other on, mm (common practice, no source). */
const SMALL_UNDER_MM = 220;
const LARGE_FROM_MM = 450;

export function scaleOf({ sizes }: Pick<Body, 'sizes'>): Scale {
  const chest = sizes['chest-girth']?.value;
  if (chest === undefined) return 'usual';
  return chest < SMALL_UNDER_MM ? 'small' : chest < LARGE_FROM_MM ? 'usual' : 'large';
}
