import type { ByScale } from '../../../body';
import type { Ref } from '../../draft-types';
import { type RefTo, sumOf } from '../../rows/names';
import type { Part } from '../../rows/part';
import { RIB_SHARE } from '../../sizes/band';
import { type Edged, type StripGives, type StripTakes, stripPart } from './strip';

/** What a band of rib is sewn to, how much of it shows, and the seam of the tube it ends, into which its own runs on. */
type Ribbed<C extends object, R extends Ref> = Edged<C, R> & { readonly high: ByScale; readonly on?: string };

/** A band of rib, folded lengthwise and stretched to the edge it is sewn to. */
export function ribPart<C extends object, R extends Ref, Name extends string>(
  name: Name,
  { high, on, ...edged }: Ribbed<C, R>,
): Part<StripTakes<C, R>, StripGives<Name>> {
  const { edge, rings = 1 } = edged;
  return stripPart<C, R, Name>(name, edged, {
    long: (look) =>
      (edge(look.choices).reduce((sum, ref) => sum + (ref.times ?? 1) * sumOf([ref as RefTo<string>], look), 0) /
        rings) *
      RIB_SHARE,
    wide: ({ wearer }) => 2 * high[wearer.scale],
    roles: () => ({ side: 'seam', bottom: 'seam', centre: 'fold' }),
    joined: { longer: 'stretched' },
    ...(on ? { on } : {}),
  });
}
