import type { Mm } from '../../../body';
import { deepestAt, hoodSide, hoodStrip } from '../../blocks/hood';
import type { Ref } from '../../draft-types';
import type { EdgeIn, Look, RefTo } from '../../rows/names';
import { sumOf } from '../../rows/names';
import { type Part, part } from '../../rows/part';
import { piece } from '../../rows/piece-row';
import { RIB_SHARE } from '../../sizes/band';
import { hoodSizes } from '../../sizes/hood';
import { WRIST_RIB_MM } from '../../sizes/scale';
import { crown, inSeam, inSlit } from './ears';
import {
  CROWN_OVER,
  type EarSize,
  HOOD_CHECK,
  type HoodChoices,
  type HoodGives,
  type HoodNames,
  type HoodTakes,
  isMeasured,
  leavesChin,
  neckOf,
  sideOf,
  threePartCrown,
  threeParts,
  twoPartCrown,
  twoParts,
  type UnderEdge,
  type UnderSize,
  wholeCrown,
} from './hood-match';

/** A garment that opens behind opens into the hood, so it has no strip, and the crown is left open above the nape. */
const NAPE_OPEN = 0.4;

/**
 * What a hood is told of its garment: the half neckline it is sewn to, from the chin to the shoulder and from there to centre
 * back, what is left free under the chin, and whether it opens behind.
 */
export type Under<C extends object, R extends Ref> = {
  readonly front: (choices: C) => readonly R[];
  readonly back: (choices: C) => readonly R[];
  readonly chin: (choices: C) => readonly R[];
  readonly opensBehind: (choices: C) => boolean;
  /** A band of rib ends it round the face. */
  readonly ribbed?: (choices: C) => boolean;
};

/** A hood in two halves, or with a strip over the head between them. Never a drawstring (ASTM F1816, EN 14682). */
export function hoodPart<C extends object, R extends Ref>(
  under: Under<C, R>,
): Part<{ choices: C & HoodChoices; size: EarSize | UnderSize; edge: EdgeIn<R> }, HoodGives> {
  // What a hood asks of its garment it asks with that garment's own choices: whoever assembles them is held to have them.
  const told = under as unknown as Under<HoodChoices, RefTo<UnderEdge>>;
  const open = (choices: HoodChoices) => (told.opensBehind(choices) ? NAPE_OPEN : 0);
  const ribbed = (choices: HoodChoices) => told.ribbed?.(choices) ?? false;
  /** Stretched to the face edge, and before it. */
  const band = ({ choices, wearer }: Pick<Look<HoodNames>, 'choices' | 'wearer'>) =>
    ribbed(choices) ? { share: RIB_SHARE, deep: WRIST_RIB_MM[wearer.scale] } : { share: 1, deep: 0 };
  const neck = (look: Look<HoodNames>) =>
    neckOf(sumOf(told.front(look.choices), look), sumOf(told.back(look.choices), look), look.sizes);
  const side = (look: Look<HoodNames>) => sideOf(look, neck(look).hoodNeck);
  const twoPart = twoPartCrown(open);
  /** What the hood gives over the head: along the middle of the strip, or along the seam. */
  const overCrown = (look: Look<HoodNames>): Mm =>
    threeParts(look.choices) ? look.length('strip.centre') : wholeCrown(look, open);
  /** The crown of a two-part hood is too long for the arc and the depth that were measured. */
  const crownFar = (look: Look<HoodNames>): boolean =>
    twoParts(look.choices) &&
    open(look.choices) === 0 &&
    isMeasured(look.wearer) &&
    twoPart.ratio(look) > CROWN_OVER + 1e-4;
  const rows = part<HoodTakes, HoodGives>({
    sizes: [hoodSizes],
    pieces: [
      piece<HoodNames>()('hood', hoodSide, {
        copies: 2,
        mirrored: true,
        onFold: false,
        sizes: {
          hoodFront: (look) => side(look).hoodFront,
          hoodDepth: (look) => side(look).hoodDepth,
          hoodNeck: (look) => neck(look).hoodNeck,
          hoodBehind: (look) => neck(look).hoodBehind,
          neckPleats: (look) => neck(look).neckPleats,
          napeOpen: ({ choices }) => (told.opensBehind(choices) ? NAPE_OPEN : null),
          earFrom: ({ choices, sizes }) => (inSeam(choices) || inSlit(choices) ? sizes.earFrom : null),
          earOpen: ({ choices, sizes }) => (inSeam(choices) ? sizes.ear : null),
          earSlit: ({ choices, sizes }) => (inSlit(choices) ? sizes.ear : null),
          earInset: ({ choices, sizes }) => (inSlit(choices) ? sizes.earInset : null),
        },
        roles: (choices) => ({
          face: ribbed(choices) ? 'seam' : 'hem',
          ear: 'opening',
          opening: 'opening',
          'neck-back': 'seam',
          'neck-front': 'seam',
        }),
        cuts: ['ear'],
      }),
      piece<HoodNames>()('strip', hoodStrip, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          stripFace: ({ sizes }) => sizes.strip / 2,
          stripNape: (look) => neck(look).stripNape,
          stripSide: (look) => sumOf(crown(look.choices), look),
          stripEven: (look) => deepestAt(side(look)),
          earFrom: ({ choices, sizes }) => (inSeam(choices) ? sizes.earFrom : null),
          earOpen: ({ choices, sizes }) => (inSeam(choices) ? sizes.ear : null),
        },
        roles: (choices) => ({ face: ribbed(choices) ? 'seam' : 'hem', ear: 'opening', nape: 'seam', centre: 'fold' }),
        when: threeParts,
      }),
    ],
    seams: [
      {
        name: 'hood-crown',
        sewn: 1,
        first: [{ piece: 'hood', edge: 'crown' }],
        second: [{ piece: 'hood', edge: 'crown' }],
        when: twoParts,
      },
      {
        name: 'hood-crown',
        sewn: 2,
        first: [{ piece: 'strip', edge: 'side' }],
        second: [{ piece: 'hood', edge: 'crown' }],
        when: (choices) => threeParts(choices) && choices.ears !== 'open',
      },
      {
        name: 'hood-face',
        sewn: 1,
        kind: 'folded',
        first: (choices) => [
          { piece: 'hood', edge: 'face', times: 2 },
          ...(threeParts(choices) ? [{ piece: 'strip', edge: 'face', times: 2 } as const] : []),
        ],
        second: [],
        when: (choices) => !ribbed(choices),
      },
      {
        name: 'hood-opening',
        sewn: 2,
        kind: 'folded',
        first: [{ piece: 'hood', edge: 'opening' }],
        second: [],
        when: told.opensBehind,
      },
      {
        name: 'hood-neck-front',
        sewn: 2,
        first: told.front,
        second: [{ piece: 'hood', edge: 'neck-front', back: true }],
        // What is left open for ears is turned while the hood is still in the hand.
        after: (choices) => ['ear-edge', ...(ribbed(choices) ? ['face-rib-inside'] : [])],
        cornered: true,
      },
      {
        name: 'hood-neck-back',
        sewn: 2,
        from: 'hood-neck-front',
        first: told.back,
        second: (choices) => [
          { piece: 'hood', edge: 'neck-back', back: true },
          ...(threeParts(choices) ? [{ piece: 'strip', edge: 'nape' } as const] : []),
        ],
        longer: 'pleated',
        cornered: true,
      },
      {
        name: 'chin',
        sewn: 2,
        kind: 'folded',
        first: told.chin,
        second: [],
        when: (choices) => leavesChin(choices) || ribbed(choices),
      },
    ],
    match: [twoPart, threePartCrown],
    instead: [
      {
        choice: 'hood',
        from: 'two',
        to: 'three',
        code: 'hood-three-instead',
        check: HOOD_CHECK,
        onlyAuto: true,
        when: crownFar,
      },
      {
        choice: 'hood',
        from: 'three',
        to: 'two',
        code: 'hood-two-instead',
        check: [],
        when: (look) => threeParts(look.choices) && told.opensBehind(look.choices),
      },
    ],
    fit: [
      {
        place: 'face',
        measure: 'face-edge',
        // Along the way the tape took: what runs on below it, to a neckline that was deepened, is no ease.
        garment: (look) =>
          band(look).share *
            (2 * look.length('hood.face') + (threeParts(look.choices) ? 2 * look.length('strip.face') : 0)) -
          2 * look.sizes.neckLower,
        why: ({ choices }) => (ribbed(choices) ? 'band-stretches' : null),
      },
      { place: 'hood-depth', measure: 'hood-depth', garment: (look) => look.sizes.hoodDepth + band(look).deep },
      {
        place: 'crown',
        measure: 'crown-arc',
        garment: overCrown,
        why: (look) => (overCrown(look) < look.sizes.hoodCrown ? 'hood-crown-differs' : null),
      },
    ],
  });
  return rows as unknown as Part<{ choices: C & HoodChoices; size: EarSize | UnderSize; edge: EdgeIn<R> }, HoodGives>;
}
