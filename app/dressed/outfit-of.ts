import type { Body } from '../body';
import type { Draft } from '../drafting/draft-types';
import { garmentsIn } from '../drafting/outfit';
import type { Clothes } from './clothes';
import { clothesOf } from './clothes-of';

/** All that a draft puts on a toy; of an outfit each part as the first garment that has one shows it. */
export function outfitOf(draft: Draft, body: Body): Clothes {
  const [first, ...others] = garmentsIn(draft).map((each) => clothesOf(each, body));
  return others.reduce<Clothes>(
    (worn, more) => ({ ...more, ...Object.fromEntries(Object.entries(worn).filter(([, part]) => part !== null)) }),
    first ?? clothesOf(draft, body),
  );
}
