import type { Mm } from '../../body';
import { apron as apronBlock } from '../blocks/apron';
import { flare } from '../blocks/flare';
import { STITCHED_DOWN_MM } from '../curves/shares';
import { apronHead } from '../heads/apron';
import type { Hems, Pockets } from '../heads/choices';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import type { SeamRow } from '../rows/rows';
import { maker, type SizesOf } from '../sizes/maker';
import { PAST_CENTRE_MM } from '../sizes/scale';
import { fastenedPart } from './parts/fastened';
import { hemRole } from './parts/hem';
import { forLooks, pocketForLooks, pocketLeftOut } from './parts/pocket-rows';

/** It covers this share of the waist, and its bib this share of that (common practice, no source). */
const COVERS = 0.56;
const BIB_SHARE = 0.58;
const LEAST_WAIST_EASE_MM = 4;
const LEAST_LENGTH_MM = 20;
/** Straps are this share of the waist wide, within what can be folded and worn (common practice, no source). */
const STRAP = { share: 1 / 26, least: 10, most: 32 } as const;
/** Beside the neck a strap has so much of its way behind it. */
const ROUND_NECK = 0.42;
/** A pocket is so wide for the apron, lets a paw in by this share of its girth, and so high for its width (common practice, no source). */
const POCKET = { wide: 0.5, paw: 0.55, high: 0.85, below: 0.16, least: 24 } as const;
const ABOVE_HEM_MM = 6;

const apronSizes = maker(
  [],
  [
    'waist',
    'bibHalf',
    'apronHalf',
    'bibHigh',
    'apronLong',
    'strapWidth',
    'neckStrap',
    'waistStrap',
    'pocketHalf',
    'pocketHigh',
    'pocketFrom',
  ],
  (wearer) => {
    const waist = wearer.girth('waist-girth', 0, LEAST_WAIST_EASE_MM);
    const apronHalf = (waist * COVERS) / 2;
    const apronLong = Math.max(wearer.of('waist-to-hem'), wearer.hem + LEAST_LENGTH_MM);
    const laps = PAST_CENTRE_MM[wearer.scale] + STITCHED_DOWN_MM;
    const from = apronLong * POCKET.below;
    const pocketHalf = apronHalf * POCKET.wide;
    return {
      sizes: {
        waist,
        apronHalf,
        bibHalf: apronHalf * BIB_SHARE,
        bibHigh: Math.max(wearer.of('bodice-height'), LEAST_LENGTH_MM),
        apronLong,
        strapWidth: Math.min(
          Math.max(waist * STRAP.share, STRAP.least),
          STRAP.most,
          apronHalf * BIB_SHARE,
          apronLong / 2,
        ),
        neckStrap: wearer.of('armhole-depth') + wearer.of('neck-girth') * ROUND_NECK + laps,
        waistStrap: waist / 2 - apronHalf + laps,
        pocketHalf,
        pocketHigh: Math.min(2 * pocketHalf * POCKET.high, apronLong - from - wearer.hem - ABOVE_HEM_MM),
        pocketFrom: from,
      },
    };
  },
);

type Choices = Hems & Pockets;
type Gives = {
  readonly size: SizesOf<typeof apronSizes>;
  readonly edge: EdgesOf<'apron', typeof apronBlock> | EdgesOf<Strap | 'apron-pocket', typeof flare>;
};
type Names = Gives & { readonly choices: Choices };
type Strap = 'neck-strap' | 'waist-strap';

const hasPocket = ({ pocket }: Pockets) => pocket;
const placed = (size: 'pocketHalf' | 'pocketHigh' | 'pocketFrom') => (look: Looked) =>
  hasPocket(look.choices) ? look.sizes[size] : null;
type Looked = {
  readonly choices: Choices;
  readonly sizes: Readonly<Record<'pocketHalf' | 'pocketHigh' | 'pocketFrom', Mm>>;
};

/** A strap hemmed along both sides, folded at the end that closes. */
function strap(name: Strap, long: 'neckStrap' | 'waistStrap') {
  return piece<Names>()(name, flare, {
    copies: 2,
    mirrored: false,
    onFold: false,
    sizes: { flareTop: 'strapWidth', flareBottom: 'strapWidth', flareHeight: long },
    roles: () => ({ top: 'seam', side: 'opening', bottom: 'closure', centre: 'opening' }),
  });
}

const strapSeams = (name: Strap): readonly SeamRow<Names>[] => [
  {
    name: `apron-${name}-long`,
    sewn: 2,
    kind: 'folded',
    first: [
      { piece: name, edge: 'side' },
      { piece: name, edge: 'centre' },
    ],
    second: [],
  },
  {
    name: `apron-${name}-end`,
    sewn: 2,
    kind: 'folded',
    first: [{ piece: name, edge: 'bottom' }],
    second: [],
    // How far two ends lap is tried on: they hang from the apron by then.
    after: () => [`apron-${name}`],
  },
  {
    name: `apron-${name}`,
    sewn: 2,
    kind: 'laid',
    first: [{ piece: 'apron', edge: name }],
    second: [{ piece: name, edge: 'top' }],
    after: () => [`apron-${name}-long`, 'apron-bib-side', 'apron-side', 'apron-top'],
  },
];

/** Its edges are turned one after the other, the hem last. */
const edges = ['bib-side', 'side', 'top', 'bottom'] as const;

export const apron = assemble(apronHead, [
  fastenedPart,
  part<{ choices: Choices; size: never; edge: never }, Gives>({
    sizes: [apronSizes],
    pieces: [
      piece<Names>()('apron', apronBlock, {
        copies: 1,
        mirrored: false,
        onFold: true,
        narrowHem: true,
        sizes: {
          pocketHalf: placed('pocketHalf'),
          pocketHigh: placed('pocketHigh'),
          pocketFrom: placed('pocketFrom'),
        },
        roles: (choices) => ({
          top: hemRole(choices),
          'bib-side': hemRole(choices),
          side: hemRole(choices),
          bottom: hemRole(choices),
          centre: 'fold',
        }),
      }),
      piece<Names>()('apron-pocket', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        narrowHem: true,
        sizes: { flareTop: 'pocketHalf', flareBottom: 'pocketHalf', flareHeight: 'pocketHigh' },
        roles: (choices) => ({ top: hemRole(choices), side: 'seam', bottom: 'seam', centre: 'fold' }),
        when: hasPocket,
      }),
      strap('neck-strap', 'neckStrap'),
      strap('waist-strap', 'waistStrap'),
    ],
    seams: [
      {
        name: 'apron-pocket-top',
        sewn: 2,
        kind: 'folded',
        first: [{ piece: 'apron-pocket', edge: 'top' }],
        second: [],
        when: hasPocket,
      },
      {
        name: 'apron-pocket',
        sewn: 2,
        kind: 'laid',
        first: [
          { piece: 'apron', edge: 'pocket-side' },
          { piece: 'apron', edge: 'pocket-bottom' },
        ],
        second: [
          { piece: 'apron-pocket', edge: 'side' },
          { piece: 'apron-pocket', edge: 'bottom' },
        ],
        when: hasPocket,
      },
      ...edges.map((edge) => ({
        name: `apron-${edge}`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece: 'apron', edge } as const],
        second: [],
      })),
      ...strapSeams('neck-strap'),
      ...strapSeams('waist-strap'),
    ],
    instead: [
      {
        ...pocketLeftOut,
        when: ({ sizes: { pocketHalf, pocketHigh } }) => Math.min(2 * pocketHalf, pocketHigh) < POCKET.least,
      },
    ],
    notes: [
      {
        ...pocketForLooks,
        told: ({ sizes, wearer }) => forLooks(2 * sizes.pocketHalf, wearer.of('paw-girth') * POCKET.paw),
        when: hasPocket,
      },
    ],
    fit: [
      {
        place: 'waist',
        measure: 'waist-girth',
        garment: ({ sizes, wearer }) =>
          2 * (sizes.apronHalf + sizes.waistStrap - STITCHED_DOWN_MM - PAST_CENTRE_MM[wearer.scale]),
      },
    ],
    notions: [
      { kind: 'closure', place: 'apron-neck-strap-end', length: ({ sizes }) => sizes.strapWidth },
      { kind: 'closure', place: 'apron-waist-strap-end', length: ({ sizes }) => sizes.strapWidth },
    ],
  }),
]);
