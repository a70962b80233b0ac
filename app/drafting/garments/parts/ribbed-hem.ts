import { type Hems, isOpen } from '../../heads/choices';
import type { RefTo } from '../../rows/names';
import { allOnly, part } from '../../rows/part';
import { ribbedSizes } from '../../sizes/ribbed';
import { HEM_RIB_MM } from '../../sizes/scale';
import type { BodiceGives } from './bodice';
import { ribPart } from './rib';
import { lappedOf, type Sides, type Top, type TopChoices } from './top';

const isRibbed = ({ hem }: Hems): boolean => hem === 'rib';

const shorter = part<
  { choices: object; size: BodiceGives['size']; edge: never },
  { size: BodiceGives['size']; edge: never }
>({ sizes: [ribbedSizes] });

/** A band of rib round the hem, which the bodice above it is shorter by; to the very edge of an opening that laps. */
export function ribbedHemParts<C extends TopChoices>(top: Top<C>) {
  const lapped = lappedOf(top);
  const band = ribPart<C, RefTo<Sides>, 'hem-rib'>('hem-rib', {
    edge: (choices) => [
      ...(lapped('front')(choices) ? [{ piece: 'front', edge: 'hem-end', back: true } as const] : []),
      { piece: 'front', edge: 'hem', back: true },
      { piece: 'back', edge: 'hem' },
      ...(lapped('back')(choices) ? [{ piece: 'back', edge: 'hem-end' } as const] : []),
    ],
    closed: (choices) => !isOpen('front')(choices) && !isOpen('back')(choices),
    ends: ({ opening }) => (opening === 'front' ? 'front' : 'back'),
    high: HEM_RIB_MM,
  });
  return [...allOnly(isRibbed, [shorter]), ...allOnly(isRibbed, [band])] as const;
}
