import type { HoodEdges, Hoods } from '../../heads/choices';
import type { RefTo } from '../../rows/names';
import { allOnly, part } from '../../rows/part';
import type { SizesOf } from '../../sizes/maker';
import { ribbedHoodSizes } from '../../sizes/ribbed-hood';
import { WRIST_RIB_MM } from '../../sizes/scale';
import { threeParts } from './hood-match';
import { ribPart } from './rib';

type Choices = Hoods & HoodEdges;
type Size = SizesOf<typeof ribbedHoodSizes>;

export const isRibbedHood = ({ hoodEdge }: HoodEdges): boolean => hoodEdge === 'rib';

const shallower = part<{ choices: object; size: Size; edge: never }, { size: Size; edge: never }>({
  sizes: [ribbedHoodSizes],
});

const band = ribPart<Choices, RefTo<'hood.face' | 'strip.face'>, 'face-rib'>('face-rib', {
  edge: (choices) => [
    { piece: 'hood', edge: 'face' },
    ...(threeParts(choices) ? [{ piece: 'strip', edge: 'face', back: true } as const] : []),
  ],
  closed: () => false,
  ends: () => 'front',
  high: WRIST_RIB_MM,
});

/** A band of rib round the face, which the hood behind it is shallower by; its ends are folded in under the chin. */
export const ribbedHoodParts = [...allOnly(isRibbedHood, [shallower]), ...allOnly(isRibbedHood, [band])] as const;
