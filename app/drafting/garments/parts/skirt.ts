import type { Mm } from '../../../body';
import { flare } from '../../blocks/flare';
import { pleated } from '../../blocks/pleats';
import type { Choice, Look, Part, PieceRow, SeamRow } from '../../rows/garment';
import { LEAST_EASE_MM } from '../../sizes/ease';
import { CLOTH_WIDE_MM, sectorReach } from '../../sizes/fullness';
import { skirtSizes } from '../../sizes/skirt';
import type { Choices } from '../../sizes/wearer';
import { hemRole } from './hem';
import { thickness } from './thick';
import { isTiered } from './tiers';

export const skirtChoice = {
  kind: 'one',
  of: ['gathered', 'knife', 'box', 'elastic', 'a-line', 'half-circle', 'circle', 'tiers'],
  fallback: 'gathered',
} as const satisfies Choice;

export const panelsChoice = { kind: 'one', of: ['auto', 'two', 'four'], fallback: 'auto' } as const satisfies Choice;

export const isPleated = (choices: Choices) => choices.skirt === 'knife' || choices.skirt === 'box';
export const isElastic = (choices: Choices) => choices.skirt === 'elastic';
/** A garment that can open elsewhere needs no opening in its skirt unless it opens behind. */
const isClosed = (choices: Choices) =>
  isElastic(choices) || (choices.opening !== undefined && choices.opening !== 'back');
/** The front alone hangs from a half circle; the back is drawn in by an elastic. */
const isLoose = (side: 'front' | 'back', choices: Choices) => side === 'back' && choices.bodice === 'half-circle';

/** How a quarter of the skirt is cut: on the fold, with a seam at the centre, or with one that opens. */
type Cut = 'fold' | 'seam' | 'open';

const isFour = (choices: Choices) => choices.panels === 'four';

function cutOf(side: 'front' | 'back', choices: Choices): Cut {
  if (side === 'back' && !isClosed(choices)) return 'open';
  return isFour(choices) ? 'seam' : 'fold';
}

/** A quarter of the skirt: on the fold, or one of a mirrored pair. */
function panel(side: 'front' | 'back', block: 'flare' | 'pleated', cut: Cut): PieceRow {
  const parted = cut !== 'fold';
  return {
    name: `skirt-${side}`,
    copies: parted ? 2 : 1,
    mirrored: parted,
    onFold: !parted,
    block: block === 'flare' ? flare : pleated,
    sizes: {
      flareTop: `${side}SkirtTop`,
      flareBottom: `${side}SkirtHem`,
      flareHeight: 'skirtLength',
      flareOpen: cut === 'open' ? 'skirtOpen' : 'notOpen',
      box: 'box',
    },
    takes: (look) => {
      const { skirtTop = 0, skirtHem = 0, skirtRatio = 1, looseTop = 0 } = look.sizes;
      const own = isLoose(side, look.choices) ? looseTop : skirtTop;
      const hung = look.choices.bodice !== undefined && !isLoose(side, look.choices);
      const top = hung ? look.length(side, 'hem') * skirtRatio : own;
      const widened = top - skirtTop;
      return {
        box: look.choices.skirt === 'box' ? 1 : 0,
        [`${side}SkirtTop`]: top,
        [`${side}SkirtHem`]: skirtHem + widened,
      };
    },
    roles: (choices) => ({
      top: isElastic(choices) ? 'casing' : 'seam',
      side: 'seam',
      bottom: isTiered(choices) ? 'seam' : hemRole(choices),
      centre: parted ? 'seam' : 'fold',
      opening: 'opening',
    }),
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) =>
      (isPleated(choices) && !isLoose(side, choices)) === (block === 'pleated') && cutOf(side, choices) === cut,
  };
}

/** The waist of the skirt, half of it, from centre front to centre back. */
export const skirtWaist = [
  { piece: 'skirt-front', edge: 'top' },
  { piece: 'skirt-back', edge: 'top', back: true },
] as const;

/** A skirt; what it hangs from is another part's. */
export const skirtPart: Part = {
  needs: (['waist-girth', 'hip-girth', 'waist-to-hem'] as const).map((measure) => ({ measure })),
  sizes: [skirtSizes],
  pieces: [
    ...(['flare', 'pleated'] as const).flatMap((block) => [
      panel('front', block, 'fold'),
      panel('front', block, 'seam'),
      panel('back', block, 'fold'),
      panel('back', block, 'seam'),
      panel('back', block, 'open'),
    ]),
  ],
  seams: [
    {
      name: 'skirt-side',
      sewn: 2,
      first: [{ piece: 'skirt-back', edge: 'side' }],
      second: [{ piece: 'skirt-front', edge: 'side' }],
    },
    ...(['front', 'back'] as const).map(
      (side): SeamRow => ({
        name: `skirt-${side}`,
        sewn: 1,
        first: [{ piece: `skirt-${side}`, edge: 'centre' }],
        second: [{ piece: `skirt-${side}`, edge: 'centre' }],
        when: (choices) => cutOf(side, choices) !== 'fold',
      }),
    ),
    ...(['front', 'back'] as const).map(
      (side): SeamRow => ({
        name: `skirt-${side}-casing`,
        sewn: 2,
        kind: 'folded',
        first: [{ piece: `skirt-${side}`, edge: 'top' }],
        second: [],
        when: isElastic,
      }),
    ),
    {
      name: 'skirt-hem',
      sewn: 2,
      kind: 'folded',
      first: [
        { piece: 'skirt-front', edge: 'bottom', back: true },
        { piece: 'skirt-back', edge: 'bottom' },
      ],
      second: [],
      when: (choices) => !isTiered(choices),
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
      when: (look) => widest(look) > CLOTH_WIDE_MM,
    },
  ],
  notes: [
    {
      code: 'wider-than-cloth',
      measures: ['waist-girth'],
      told: (look) => (widest(look) > CLOTH_WIDE_MM ? { width: widest(look), cloth: CLOTH_WIDE_MM } : null),
    },
    {
      code: 'too-thick-to-gather',
      measures: [],
      told: thickness,
      when: ({ skirt }) => ['gathered', 'elastic', 'tiers'].includes(String(skirt)),
    },
    { code: 'too-thick-to-pleat', measures: [], told: thickness, when: isPleated },
    {
      code: 'pleats-narrow',
      measures: ['waist-girth'],
      told: ({ sizes: { waist = 0, pleats = 1 }, choices }) => {
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
      garment: ({ sizes }) => 4 * Math.max(sizes.skirtHem ?? 0, sizes.skirtTop ?? 0),
      why: ({ sizes, wearer }) =>
        4 * Math.max(sizes.skirtHem ?? 0, sizes.skirtTop ?? 0) < wearer.of('hip-girth') + LEAST_EASE_MM
          ? 'above-the-hip'
          : null,
    },
  ],
};

/** Folds less deep than this do not stay (common practice, no source). */
const NARROWEST_FOLD_MM = 8;

/** The widest piece of the skirt as it is cut, unfolded, mm. */
function widest({ sizes, choices }: Look): Mm {
  return Math.max(
    ...(['front', 'back'] as const).map((side) => {
      const { [`${side}SkirtTop`]: top = 0, [`${side}SkirtHem`]: hem = 0, skirtLength = 1 } = sizes;
      return sectorReach(top, hem, skirtLength) * (cutOf(side, choices) === 'fold' ? 2 : 1);
    }),
  );
}
