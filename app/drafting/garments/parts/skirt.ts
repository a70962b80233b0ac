import type { Mm } from '../../../body';
import { flare } from '../../blocks/flare';
import { pleated } from '../../blocks/pleats';
import { type Hems, isStraight, type Panels, type Skirts } from '../../heads/choices';
import type { Look, RefTo } from '../../rows/names';
import { type Part, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import type { SeamRow } from '../../rows/rows';
import { LEAST_EASE_MM } from '../../sizes/ease';
import { elasticFor } from '../../sizes/fastening';
import { CLOTH_WIDE_MM, sectorReach } from '../../sizes/fullness';
import type { Sizes, SizesOf } from '../../sizes/maker';
import { skirtSizes } from '../../sizes/skirt';
import { hemRole, isReady, readyNote } from './hem';
import { thickness } from './thick';
import { isTiered } from './tiers';
import type { Side } from './top';

export type SkirtChoices = Skirts & Panels & Hems;
export const isPleated = ({ skirt }: Skirts) => skirt === 'knife' || skirt === 'box';
export const isElastic = ({ skirt }: Skirts) => skirt === 'elastic';

/** What a skirt is told of its garment. */
export type Hangs<C extends object> = {
  /** It opens at the centre back, as far as the hips ask. */
  readonly opens: (choices: C) => boolean;
  /** A side that is not sewn to a bodice but drawn in by an elastic: wider, and never pleated. */
  readonly loose: (side: Side, choices: C) => boolean;
};
/** And whether it is sewn to a bodice's hems. */
type Hung<C extends object> = Hangs<C> & { readonly fromBodice: boolean };

type Own = EdgesOf<'skirt-front' | 'skirt-back', typeof flare | ReturnType<typeof pleated>>;
export type SkirtGives = {
  readonly size: SizesOf<typeof skirtSizes> | `${Side}SkirtTop` | `${Side}SkirtHem`;
  readonly edge: Own;
};
type Bodiced = 'front.hem' | 'back.hem';
type Names<C extends object> = { readonly choices: C; readonly size: SkirtGives['size']; readonly edge: Own | Bodiced };

/** How a quarter of the skirt is cut: on the fold, with a seam at the centre, or with one that opens. */
type Cut = 'fold' | 'seam' | 'open';

function cutOf<C extends SkirtChoices>({ opens }: Pick<Hangs<C>, 'opens'>, side: Side, choices: C): Cut {
  if (side === 'back' && opens(choices)) return 'open';
  return choices.panels === 'four' ? 'seam' : 'fold';
}

const blocks = { flare, knife: pleated('knife'), box: pleated('box') } as const;
type Kind = keyof typeof blocks;

/** A quarter of the skirt: on the fold, or one of a mirrored pair. */
function panel<C extends SkirtChoices>(hung: Hung<C>, side: Side, kind: Kind, cut: Cut) {
  const { loose, fromBodice } = hung;
  const parted = cut !== 'fold';
  const kindOf = (choices: C): Kind =>
    (choices.skirt === 'knife' || choices.skirt === 'box') && !loose(side, choices) ? choices.skirt : 'flare';
  return piece<Names<C>>()(`skirt-${side}`, blocks[kind] as (typeof blocks)['knife'], {
    copies: parted ? 2 : 1,
    mirrored: parted,
    onFold: !parted,
    sizes: {
      flareTop: `${side}SkirtTop` as const,
      flareBottom: `${side}SkirtHem` as const,
      flareHeight: 'skirtLength',
      flareOpen: cut === 'open' ? 'skirtOpen' : null,
    },
    takes: ({ sizes: { skirtTop, skirtHem, skirtRatio, looseTop }, choices, length }) => {
      const own = loose(side, choices) ? looseTop : skirtTop;
      const top = fromBodice && !loose(side, choices) ? length(`${side}.hem`) * skirtRatio : own;
      return { [`${side}SkirtTop`]: top, [`${side}SkirtHem`]: skirtHem + (top - skirtTop) };
    },
    roles: (choices) => ({
      top: isElastic(choices) ? 'casing' : 'seam',
      side: 'seam',
      bottom: isTiered(choices) ? 'seam' : hemRole(choices),
      centre: parted ? 'seam' : 'fold',
      opening: 'opening',
    }),
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) => kindOf(choices) === kind && cutOf(hung, side, choices) === cut,
  });
}

/** The waist of the skirt, half of it, from centre front to centre back. */
export const skirtWaist = [
  { piece: 'skirt-front', edge: 'top' },
  { piece: 'skirt-back', edge: 'top', back: true },
] as const;

/** A skirt that hangs from a band or a casing of its own. */
export function skirtPart<C extends SkirtChoices>(hung: Hangs<C>) {
  // Not sewn to a bodice, it asks for no edge of one.
  return quarters({ ...hung, fromBodice: false }) as unknown as Part<
    { choices: C; size: never; edge: never },
    SkirtGives
  >;
}

/** A skirt sewn to the hems of a bodice. */
export function hungSkirtPart<C extends SkirtChoices>(hung: Hangs<C>) {
  return quarters({ ...hung, fromBodice: true });
}

function quarters<C extends SkirtChoices>(hung: Hung<C>) {
  const widest = (look: Look<Names<C>>) => widestOf(look, hung);
  return part<{ choices: C; size: never; edge: Bodiced }, SkirtGives>({
    sizes: [skirtSizes],
    pieces: [
      ...(['flare', 'knife', 'box'] as const).flatMap((kind) => [
        panel(hung, 'front', kind, 'fold'),
        panel(hung, 'front', kind, 'seam'),
        panel(hung, 'back', kind, 'fold'),
        panel(hung, 'back', kind, 'seam'),
        panel(hung, 'back', kind, 'open'),
      ]),
    ],
    seams: [
      {
        name: 'skirt-side',
        sewn: 2,
        first: [{ piece: 'skirt-back', edge: 'side' }],
        second: [{ piece: 'skirt-front', edge: 'side' }],
      },
      ...(['front', 'back'] as const).map((side): SeamRow<Names<C>> => {
        // Nothing is left to sew where it opens to its hem.
        const below = (choices: C, { skirtOpen, skirtLength }: Sizes<'skirtOpen' | 'skirtLength'>): RefTo<Own>[] =>
          cutOf(hung, side, choices) === 'open' && skirtOpen >= skirtLength
            ? []
            : [{ piece: `skirt-${side}`, edge: 'centre' }];
        return {
          name: `skirt-${side}`,
          sewn: 1,
          first: below,
          second: below,
          when: (choices) => cutOf(hung, side, choices) !== 'fold',
        };
      }),
      { name: 'skirt-casing', sewn: 2, kind: 'folded', first: skirtWaist, second: [], when: isElastic },
      {
        name: 'skirt-opening',
        sewn: 2,
        kind: 'folded',
        first: [{ piece: 'skirt-back', edge: 'opening' }],
        second: [],
        when: (choices) => cutOf(hung, 'back', choices) === 'open',
      },
      {
        name: 'skirt-hem',
        sewn: 2,
        kind: 'folded',
        first: [
          { piece: 'skirt-front', edge: 'bottom', back: true },
          { piece: 'skirt-back', edge: 'bottom' },
        ],
        second: [],
        when: (choices) => !isTiered(choices) && !isReady(choices),
      },
    ],
    notes: [
      { ...readyNote, when: isReady },
      {
        code: 'wider-than-cloth',
        measures: ['waist-girth'],
        told: (look) => (widest(look) > CLOTH_WIDE_MM ? { width: widest(look), cloth: CLOTH_WIDE_MM } : null),
      },
      {
        code: 'too-thick-to-gather',
        measures: [],
        told: thickness,
        when: ({ skirt }) => skirt === 'gathered' || skirt === 'elastic' || skirt === 'tiers',
      },
      { code: 'too-thick-to-pleat', measures: [], told: thickness, when: isPleated },
      {
        code: 'pleats-narrow',
        measures: ['waist-girth'],
        told: ({ sizes: { waist, pleats }, choices }) => {
          const deep = waist / 4 / pleats / (choices.skirt === 'box' ? 2 : 1);
          return deep < NARROWEST_FOLD_MM ? { deep } : null;
        },
        when: isPleated,
      },
    ],
    fit: [
      {
        place: 'hip',
        measure: 'hip-girth',
        garment: ({ sizes }) => 4 * Math.max(sizes.skirtHem, sizes.skirtTop),
        why: ({ sizes, wearer }) =>
          4 * Math.max(sizes.skirtHem, sizes.skirtTop) < wearer.of('hip-girth') + LEAST_EASE_MM
            ? 'above-the-hip'
            : null,
      },
    ],
    notions: [
      {
        kind: 'elastic',
        place: 'waist',
        length: ({ wearer }) => elasticFor(wearer.of('waist-girth')),
        when: isElastic,
      },
    ],
  });
}

/** In four panels where two would be wider than cloth; only a hem that is straight is laid on a finished one. */
export function panelsPart<C extends SkirtChoices>(hung: Pick<Hangs<C>, 'opens'>) {
  return part<{ choices: SkirtChoices; size: SkirtGives['size']; edge: never }>({
    unsuited: [
      {
        choice: 'hem',
        from: 'ready',
        to: 'turned',
        code: 'hem-turned-instead',
        when: (_, { skirt }) => !isStraight(skirt),
      },
    ],
    instead: [
      {
        choice: 'panels',
        from: 'two',
        to: 'four',
        code: 'panels-added',
        check: ['waist-girth', 'waist-to-hem'],
        onlyAuto: true,
        // The skirt beside this part asks for its garment's own choices too.
        when: (look) => widestOf(look as unknown as Look<Names<C>>, hung) > CLOTH_WIDE_MM,
      },
    ],
  });
}

/** Folds less deep than this do not stay (common practice, no source). */
const NARROWEST_FOLD_MM = 8;

/** The widest piece of the skirt as it is cut, unfolded, mm. */
function widestOf<C extends SkirtChoices>({ sizes, choices }: Look<Names<C>>, hung: Pick<Hangs<C>, 'opens'>): Mm {
  return Math.max(
    ...(['front', 'back'] as const).map((side) => {
      const { [`${side}SkirtTop` as const]: top, [`${side}SkirtHem` as const]: hem, skirtLength } = sizes;
      return sectorReach(top, hem, skirtLength) * (cutOf(hung, side, choices) === 'fold' ? 2 : 1);
    }),
  );
}
