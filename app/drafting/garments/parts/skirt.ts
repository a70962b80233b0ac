import { flare } from '../../blocks/flare';
import { pleated } from '../../blocks/pleats';
import { skirtSizes } from '../../sizes/skirt';
import type { Choices } from '../../sizes/wearer';
import type { Choice, Part, PieceRow, SeamRow } from '../garment';
import { hemRole } from './bodice';

export const skirtChoice = {
  kind: 'one',
  of: ['gathered', 'knife', 'box', 'elastic', 'a-line', 'half-circle', 'circle', 'tiers'],
  fallback: 'gathered',
} as const satisfies Choice;

export const isPleated = (choices: Choices) => choices.skirt === 'knife' || choices.skirt === 'box';
const isTiered = (choices: Choices) => choices.skirt === 'tiers';
export const isElastic = (choices: Choices) => choices.skirt === 'elastic';
/** A garment that can open elsewhere needs no opening in its skirt unless it opens behind. */
const isClosed = (choices: Choices) =>
  isElastic(choices) || (choices.opening !== undefined && choices.opening !== 'back');
/** The front alone hangs from a half circle; the back ends in a casing. */
const isCased = (side: 'front' | 'back') => (choices: Choices) =>
  isElastic(choices) || (side === 'back' && choices.bodice === 'half-circle');

/** A quarter of the skirt: the front on the fold, the back a mirrored pair with its opening at the centre. */
function panel(side: 'front' | 'back', block: 'flare' | 'pleated', closed: boolean): PieceRow {
  const back = side === 'back' && !closed;
  return {
    name: `skirt-${side}`,
    copies: back ? 2 : 1,
    mirrored: back,
    onFold: !back,
    block: block === 'flare' ? flare : pleated,
    sizes: {
      flareTop: `${side}SkirtTop`,
      flareBottom: `${side}SkirtHem`,
      flareHeight: 'skirtLength',
      flareOpen: back ? 'skirtOpen' : 'notOpen',
      box: 'box',
    },
    takes: (look) => {
      const { skirtTop = 0, skirtHem = 0, skirtRatio = 1 } = look.sizes;
      const hung = look.choices.bodice !== undefined && !isCased(side)(look.choices);
      const top = hung ? look.length(side, 'hem') * skirtRatio : skirtTop;
      const widened = top - skirtTop;
      return {
        box: look.choices.skirt === 'box' ? 1 : 0,
        [`${side}SkirtTop`]: top,
        [`${side}SkirtHem`]: skirtHem + widened,
      };
    },
    roles: (choices) => ({
      top: isCased(side)(choices) ? 'casing' : 'seam',
      side: 'seam',
      bottom: isTiered(choices) ? 'seam' : hemRole(choices),
      centre: back ? 'seam' : 'fold',
      opening: 'opening',
    }),
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) => isPleated(choices) === (block === 'pleated') && isClosed(choices) === closed,
  };
}

function tier(n: 2 | 3): PieceRow {
  return {
    name: `tier-${n}`,
    copies: 2,
    mirrored: false,
    onFold: true,
    block: flare,
    sizes: { flareTop: `tier${n}`, flareBottom: `tier${n}`, flareHeight: 'skirtLength', flareOpen: 'notOpen' },
    roles: (choices) => ({ top: 'seam', side: 'seam', bottom: n === 3 ? hemRole(choices) : 'seam', centre: 'fold' }),
    when: isTiered,
  };
}

/** A tier is gathered on to the one above, front and back alike. */
const tierSeams: readonly SeamRow[] = [
  ...([2, 3] as const).map(
    (n): SeamRow => ({
      name: `tier-${n}-side`,
      sewn: 2,
      first: [{ piece: `tier-${n}`, edge: 'side' }],
      second: [{ piece: `tier-${n}`, edge: 'side' }],
      when: isTiered,
    }),
  ),
  {
    name: 'tier-2',
    sewn: 2,
    first: [
      { piece: 'skirt-front', edge: 'bottom', back: true },
      { piece: 'skirt-back', edge: 'bottom' },
    ],
    second: [{ piece: 'tier-2', edge: 'top', times: 2 }],
    longer: 'gathered',
    when: isTiered,
  },
  {
    name: 'tier-3',
    sewn: 2,
    first: [{ piece: 'tier-2', edge: 'bottom', times: 2 }],
    second: [{ piece: 'tier-3', edge: 'top', times: 2 }],
    longer: 'gathered',
    when: isTiered,
  },
];

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
    ...(['front', 'back'] as const).flatMap((side) => [
      panel(side, 'flare', false),
      panel(side, 'flare', true),
      panel(side, 'pleated', false),
      panel(side, 'pleated', true),
    ]),
    tier(2),
    tier(3),
  ],
  seams: [
    {
      name: 'skirt-side',
      sewn: 2,
      first: [{ piece: 'skirt-back', edge: 'side' }],
      second: [{ piece: 'skirt-front', edge: 'side' }],
    },
    {
      name: 'skirt-back',
      sewn: 1,
      first: [{ piece: 'skirt-back', edge: 'centre' }],
      second: [{ piece: 'skirt-back', edge: 'centre' }],
      when: (choices) => !isClosed(choices),
    },
    ...(['front', 'back'] as const).map(
      (side): SeamRow => ({
        name: `skirt-${side}-casing`,
        sewn: 2,
        kind: 'folded',
        first: [{ piece: `skirt-${side}`, edge: 'top' }],
        second: [],
        when: isCased(side),
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
    {
      name: 'tier-hem',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'tier-3', edge: 'bottom', times: 2 }],
      second: [],
      when: isTiered,
    },
    ...tierSeams,
  ],
  fit: [
    {
      place: 'hip',
      measure: 'hip-girth',
      garment: ({ sizes }) => 4 * Math.max(sizes.skirtHem ?? 0, sizes.skirtTop ?? 0),
      why: ({ sizes, wearer }) =>
        4 * Math.max(sizes.skirtHem ?? 0, sizes.skirtTop ?? 0) < wearer.of('hip-girth') ? 'above-the-hip' : null,
    },
  ],
};
