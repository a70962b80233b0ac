import { assemble, only, type Part } from '../rows/garment';
import { tankSizes } from '../sizes/tank';
import { waistSizes } from '../sizes/waist';
import type { Choices } from '../sizes/wearer';
import { armholePart } from './parts/armhole';
import { backCasingPart } from './parts/back-casing';
import { bandPart, isBand, isRound } from './parts/band';
import { bandTopParts } from './parts/band-top';
import { bodicePart } from './parts/bodice';
import { neckChoice, neckPart } from './parts/neck';
import { isPleated, panelsChoice, skirtChoice, skirtPart, skirtWaist } from './parts/skirt';
import { sleevePart } from './parts/sleeve';
import { tiersPart } from './parts/tiers';

const hangs = (choices: Choices) => !isBand(choices);
const isTank = (choices: Choices) => choices.bodice === 'tank';

/** The bodice goes all the way round; behind a half circle the skirt hangs from an elastic. */
const isAround = (choices: Choices) => !isRound(choices);

/** Where the skirt is sewn to the bodice: all round, or in front alone. */
const waist: Part = {
  needs: (['waist-girth', 'underarm-to-waist'] as const).map((measure) => ({ measure })),
  unsuited: ['back', 'auto'].map((from) => ({
    choice: 'opening',
    from,
    to: 'none',
    ...(from === 'back' ? { code: 'opening-none-instead' } : {}),
    when: (_, choices) => isRound(choices),
  })),
  passages: [
    { measure: 'head-girth', through: 'waist', gives: ({ waist: girth = 0 }) => girth, seamed: true, when: isAround },
    {
      measure: 'head-girth',
      through: 'waist',
      gives: ({ waist: girth = 0, looseTop = 0 }) => girth / 2 + 2 * looseTop,
      seamed: true,
      when: isRound,
    },
  ],
  seams: [
    {
      name: 'waist',
      sewn: 2,
      first: (choices) => [
        { piece: 'front', edge: 'hem', back: true },
        ...(isAround(choices) ? [{ piece: 'back', edge: 'hem' }] : []),
      ],
      second: (choices) => (isRound(choices) ? skirtWaist.slice(0, 1) : skirtWaist),
      longer: (choices) => (isPleated(choices) ? 'pleated' : 'gathered'),
      cornered: true,
    },
  ],
  fit: [{ place: 'waist', measure: 'waist-girth', garment: ({ sizes }) => sizes.waist ?? 0 }],
};

/** Any bodice with any skirt, with sleeves or straps. */
export const dress = assemble(
  {
    id: 'dress',
    bodies: ['upright'],
    opensAt: 'back',
    choices: {
      bodice: {
        kind: 'one',
        of: ['shoulder', 'tank', 'band', 'dipped', 'half-circle', 'halter'],
        fallback: 'shoulder',
      },
      skirt: { ...skirtChoice, of: skirtChoice.of.filter((each) => each !== 'elastic') },
      panels: panelsChoice,
      sleeve: { kind: 'one', of: ['short', 'long', 'puffed', 'none'], fallback: 'short' },
      armhole: { kind: 'one', of: ['auto', 'set-in', 'raglan'], fallback: 'auto' },
      straps: { kind: 'one', of: ['straight', 'crossed', 'neck', 'none'], fallback: 'straight' },
      neck: neckChoice,
      lining: { kind: 'yes', fallback: false },
      opening: { kind: 'one', of: ['auto', 'back', 'none'], fallback: 'auto' },
      hem: { kind: 'one', of: ['turned', 'raw'], fallback: 'turned' },
    },
    auto: { panels: 'two', armhole: 'set-in', opening: 'none' },
  },
  [
    only(hangs, bodicePart),
    only(hangs, { sizes: [waistSizes] }),
    only(isTank, { sizes: [tankSizes] }),
    only(hangs, sleevePart),
    ...neckPart('back').map((part) => only(hangs, part)),
    only(hangs, armholePart),
    ...[bandPart, ...bandTopParts].map((part) => only(isBand, part)),
    skirtPart,
    tiersPart,
    backCasingPart,
    waist,
  ],
);
