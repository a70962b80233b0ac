import { bodice } from '../../blocks/bodice';
import type { Ref } from '../../draft-types';
import { type Part, type PieceRow, sumOf } from '../../rows/garment';
import { bodiceSizes } from '../../sizes/bodice';
import { neckSizes } from '../../sizes/neck';
import type { Choices } from '../../sizes/wearer';
import { hemRole } from './hem';
import { scrapNeck } from './thick';

/** A centre opened all the way laps this far past the centre line on either side. */
export const PAST_CENTRE_MM = 10;

export const isOpen = (side: 'front' | 'back') => (choices: Choices) => choices.opening === side;
export const hasSleeve = (choices: Choices) => choices.sleeve !== undefined && choices.sleeve !== 'none';
export const isRaglan = (choices: Choices) => hasSleeve(choices) && choices.armhole === 'raglan';

/** A garment with a choice of bodices has a skirt sewn to its waist. */
export const isWaisted = (choices: Choices) => choices.bodice !== undefined;
const hasHem = (choices: Choices) => !isWaisted(choices);
/** A lining is sewn to it round neck, opening and hem, and both are turned out. */
export const isLined = (choices: Choices) => choices.neck === 'lined';
export const isBagged = (choices: Choices) => isLined(choices) && hasHem(choices) && choices.hem === 'turned';

/** What a front or back takes from the finished sizes. */
export function bodiceFeed(side: 'front' | 'back', open: boolean): Record<string, string> {
  return {
    neckDrop: `${side}NeckDrop`,
    tummyHalf: `${side}Tummy`,
    hemHalf: `${side}Hem`,
    sideGather: `${side}Gather`,
    centreLength: `${side}Length`,
    neckShare: `${side}NeckKept`,
    slitLength: open ? 'noSlit' : `${side}Slit`,
    pocketBeside: open ? 'pocketBeside' : 'notOpen',
    ...(side === 'back' ? { pocket: 'noPocket' } : {}),
  };
}

function row(side: 'front' | 'back', arm: 'set-in' | 'raglan', open: boolean): PieceRow {
  return {
    name: side,
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    block: bodice({ arm, centre: open ? 'open' : 'fold' }),
    sizes: bodiceFeed(side, open),
    takes: () => ({ past: PAST_CENTRE_MM }),
    roles: (choices) => ({
      neckline: 'seam',
      shoulder: 'seam',
      armhole: 'seam',
      side: 'seam',
      hem: isWaisted(choices) || isBagged(choices) ? 'seam' : hemRole(choices),
      'neck-end': isLined(choices) ? 'seam' : 'neckline',
      'hem-end': isWaisted(choices) ? 'opening' : isBagged(choices) ? 'seam' : hemRole(choices),
      centre: !open ? 'fold' : isLined(choices) ? 'seam' : 'closure',
    }),
    cuts: ['slit'],
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) => isOpen(side)(choices) === open && isRaglan(choices) === (arm === 'raglan'),
  };
}

/** Half the neckline from centre front to centre back, as a collar or hood meets it. */
export function halfNeckline(choices: Choices): Ref[] {
  return [
    { piece: 'front', edge: 'neckline' },
    ...(isRaglan(choices) ? [{ piece: 'sleeve', edge: 'neck' }] : []),
    { piece: 'back', edge: 'neckline', back: true },
  ];
}

/** The same to the very edge of an opening: where a binding ends. */
export function wholeHalfNeckline(choices: Choices): Ref[] {
  return [
    ...(isOpen('front')(choices) ? [{ piece: 'front', edge: 'neck-end' }] : []),
    ...halfNeckline(choices),
    ...(isOpen('back')(choices) ? [{ piece: 'back', edge: 'neck-end', back: true as const }] : []),
  ];
}

const needed = [
  'neck-girth',
  'chest-girth',
  'body-girth',
  'front-width',
  'back-width',
  'hem-girth',
  'shoulder-length',
  'side-inset',
  'armhole-depth',
  'body-length',
  'back-body-length',
  'side-length',
  'front-neck-drop',
  'back-neck-drop',
] as const;

/** Front and back hanging from the shoulders. Something is sewn to every neckline and armhole. */
export const bodicePart: Part = {
  needs: needed.map((measure) => ({ measure })),
  sizes: [neckSizes, bodiceSizes],
  passages: [
    { measure: 'head-girth', through: 'hem', gives: (sizes) => sizes.hem ?? 0, when: hasHem },
    { measure: 'head-girth', through: 'chest', gives: (sizes) => sizes.chest ?? 0 },
    { measure: 'head-girth', through: 'neck', gives: (sizes) => sizes.neck ?? 0, atNeck: true, seamed: true },
  ],
  pieces: (['front', 'back'] as const).flatMap((side) =>
    (['set-in', 'raglan'] as const).flatMap((arm) => [row(side, arm, false), row(side, arm, true)]),
  ),
  seams: [
    {
      name: 'shoulder',
      sewn: 2,
      first: [{ piece: 'back', edge: 'shoulder' }],
      second: [{ piece: 'front', edge: 'shoulder' }],
      when: (choices) => !isRaglan(choices),
    },
    {
      name: 'side',
      sewn: 2,
      first: [{ piece: 'back', edge: 'side' }],
      second: [{ piece: 'front', edge: 'side' }],
      longer: 'gathered',
    },
    ...(['front', 'back'] as const).flatMap((side) => [
      {
        name: `${side}-hem`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece: side, edge: 'hem' }],
        second: [],
        when: (choices: Choices) => hasHem(choices) && !isBagged(choices),
      },
      {
        name: `${side}-closure`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece: side, edge: 'centre' }],
        second: [],
        when: (choices: Choices) => isOpen(side)(choices) && !isLined(choices),
      },
    ]),
  ],
  notes: [scrapNeck],
  fit: [
    {
      place: 'neck',
      measure: 'neck-girth',
      garment: (look) => 2 * sumOf(halfNeckline(look.choices), look),
    },
    { place: 'chest', measure: 'chest-girth', garment: (look) => look.sizes.chest ?? 0 },
    { place: 'tummy', measure: 'body-girth', garment: (look) => look.sizes.tummy ?? 0, when: hasHem },
    { place: 'hem', measure: 'hem-girth', garment: (look) => look.sizes.hem ?? 0, when: hasHem },
  ],
};
